/** How much a dish is liked, beside the others, and what sways it. */
export interface Appetite {
  readonly liking: number;
  /** Share more of it at midsummer, and less at midwinter. */
  readonly summer?: number;
  /** Share more of it on Friday and Saturday nights. */
  readonly night?: number;
  /** Share more of it on Sundays, when families come. */
  readonly sunday?: number;
  /** Share more of it each year. */
  readonly perYear?: number;
}

export const DISHES_WANTED: Readonly<Record<string, Appetite>> = {
  'Marram slate': { liking: 14, night: 0.15 },
  'Sea fret': { liking: 9, night: 0.25, sunday: 0.1, perYear: 0.05 },
  Driftwood: { liking: 10.5 },
  'Lighthouse soufflé': { liking: 9, summer: -0.2, night: 0.1 },
  'Harbour brownie, malt ice': { liking: 12.5, sunday: 0.2, perYear: -0.06 },
  'Coffee and cardamom choux': { liking: 5.5, sunday: 0.05 },
  'Pebble beach': { liking: 3.6, perYear: 0.15 },
  'Drinking chocolate, warm madeleines': { liking: 5.5, summer: -0.6, sunday: 0.15 },
  'Lemon tart, scorched meringue': { liking: 8.5, summer: 0.15 },
  'Burnt honey parfait': { liking: 4, summer: 0.2 },
  'Three scoops': { liking: 6.5, summer: 0.45, sunday: 0.3, night: -0.2 },
  'Vanilla set cream': { liking: 4.2, summer: 0.1 },
  'Cheese and oatcakes': { liking: 3.4, summer: -0.15, night: 0.25 },
  'Black cherry trifle': { liking: 7, night: 0.1 },
  'Mint and nib iced sandwich': { liking: 4.2, summer: 0.2, sunday: 0.2 },
  'Strawberries, crème fraîche ice': { liking: 7.5, summer: 0.3 },
  'Chestnut dome': { liking: 4.6 },
  'Hot orange pudding': { liking: 8.5, summer: -0.2 },
  'Ginger cake, poached quince': { liking: 4 },
  'Passion fruit pavé': { liking: 5.6, summer: 0.1 },
  'Raspberry and pistachio sablé': { liking: 6.8, summer: 0.2 },
  'Rhubarb custard slice': { liking: 4.6 },
  'Smoke and peat': { liking: 4.4, night: 0.2 },
  'Sea buckthorn posset': { liking: 5.4 },
  'Figs, fig leaf cream': { liking: 4.2 },
};

/** Per guest. */
export const DRINKS_WANTED: Readonly<Record<string, Appetite>> = {
  'Late-harvest white, glass': { liking: 0.11, night: 0.3 },
  'Noble-rot white, glass': { liking: 0.035, night: 0.4 },
  'Fortified red, glass': { liking: 0.06, summer: -0.3, night: 0.3 },
  'Ice cider, glass': { liking: 0.07, summer: 0.3 },
  Espresso: { liking: 0.2 },
  'Flat white': { liking: 0.24, sunday: 0.2 },
  'Pot of tea': { liking: 0.13, summer: -0.25, sunday: 0.2 },
};

/** Per guest, a little more at the end of the week. */
export const SET_MENUS_WANTED: Readonly<Record<string, Appetite>> = {
  'Low tide, two courses': { liking: 0.085, sunday: 0.2 },
  'High tide, three courses and a glass': { liking: 0.036, night: 0.3 },
};

/** A day, whatever the number of guests. */
export const OUT_OF_THE_HOUSE_WANTED: Readonly<Record<string, Readonly<Record<'takeaway' | 'delivery', Appetite>>>> = {
  'Twelve sweets in a box': { takeaway: { liking: 4.2, night: 0.2 }, delivery: { liking: 1.3, summer: -0.2 } },
  'Harbour brownie, malt ice': {
    takeaway: { liking: 3.4, summer: 0.4 },
    delivery: { liking: 3.2, summer: -0.3, night: 0.3, perYear: 0.2 },
  },
};
