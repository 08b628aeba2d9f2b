/** What a person is to a venue. */
export type Role = 'owner' | 'chef' | 'accountant';

/** What can be seen or done in a venue. */
export type Action =
  | 'see' // every figure that names no one's pay
  | 'see-wages'
  | 'change-kitchen' // ingredients, recipes, trials
  | 'change-buying' // offers, prices, claims
  | 'change-menu' // menu prices, plans
  | 'bring-in' // files of any kind
  | 'close' // and reopen, with a reason
  | 'manage'; // settings, people, tokens

/** Who may do what: the one table that is asked, before anything is read or written. */
const MAY: Readonly<Record<Role, readonly Action[]>> = {
  owner: ['see', 'see-wages', 'change-kitchen', 'change-buying', 'change-menu', 'bring-in', 'close', 'manage'],
  chef: ['see', 'change-kitchen', 'change-buying', 'bring-in'],
  accountant: ['see', 'see-wages', 'bring-in', 'close'],
};

export function may(role: Role, action: Action): boolean {
  return MAY[role].includes(action);
}
