/** A dish on the menu: at which price (tax inside), in which channel, from when; off from the day it leaves. */
export interface MenuStep {
  readonly item: string;
  readonly channel: 'dine_in' | 'takeaway' | 'delivery';
  readonly from: string;
  readonly price: number;
  readonly off?: true;
}

export const TAX_PCT = 10;
/** What the riders' house keeps of a delivery. */
export const DELIVERY_COMMISSION_PCT = 25;

const OPENING = '2025-05-01';
const AUTUMN = '2025-10-01';
/** Spring menu, and the one round of prices. */
const SPRING = '2026-03-04';
const SECOND_AUTUMN = '2026-09-02';

/** What stays: the opening price, and the price from spring 2026 on. */
const STAYS: readonly (readonly [item: string, opening: number, spring: number])[] = [
  ['Marram slate', 13.5, 14],
  ['Sea fret', 14, 15],
  ['Driftwood', 10, 10],
  ['Lighthouse soufflé', 10, 10.5],
  ['Harbour brownie, malt ice', 8.5, 8.5],
  ['Coffee and cardamom choux', 9, 9.5],
  ['Pebble beach', 10, 10.5],
  ['Drinking chocolate, warm madeleines', 8.5, 9],
  ['Lemon tart, scorched meringue', 9, 9.5],
  ['Burnt honey parfait', 9, 9],
  ['Three scoops', 8.5, 8.5],
  ['Cheese and oatcakes', 10, 10.5],
  ['Low tide, two courses', 17, 17.5],
  ['High tide, three courses and a glass', 36, 37.5],
  ['Late-harvest white, glass', 9, 9.5],
  ['Noble-rot white, glass', 12, 12.5],
  ['Fortified red, glass', 7.5, 8],
  ['Ice cider, glass', 10, 10],
  ['Espresso', 3, 3.2],
  ['Flat white', 4, 4.2],
  ['Pot of tea', 3.5, 3.5],
];

/** What comes and goes: from, to (null: still there), price. */
const COMES_AND_GOES: readonly (readonly [item: string, from: string, to: string | null, price: number])[] = [
  ['Black cherry trifle', OPENING, AUTUMN, 9.5],
  ['Mint and nib iced sandwich', OPENING, AUTUMN, 9],
  ['Strawberries, crème fraîche ice', OPENING, AUTUMN, 9.5],
  ['Chestnut dome', AUTUMN, SPRING, 10],
  ['Hot orange pudding', AUTUMN, SPRING, 10],
  ['Hot orange pudding', SECOND_AUTUMN, null, 10.5],
  ['Ginger cake, poached quince', AUTUMN, SPRING, 9],
  ['Passion fruit pavé', SPRING, SECOND_AUTUMN, 10],
  ['Raspberry and pistachio sablé', SPRING, SECOND_AUTUMN, 10.5],
  ['Rhubarb custard slice', SPRING, SECOND_AUTUMN, 9],
  ['Smoke and peat', SECOND_AUTUMN, null, 10.5],
  ['Sea buckthorn posset', SECOND_AUTUMN, null, 9],
  ['Figs, fig leaf cream', SECOND_AUTUMN, null, 9.5],
];

const OUT_OF_THE_HOUSE: readonly MenuStep[] = [
  { item: 'Twelve sweets in a box', channel: 'takeaway', from: OPENING, price: 14.5 },
  { item: 'Twelve sweets in a box', channel: 'takeaway', from: SPRING, price: 15.5 },
  { item: 'Twelve sweets in a box', channel: 'delivery', from: OPENING, price: 17.5 },
  { item: 'Twelve sweets in a box', channel: 'delivery', from: SPRING, price: 18.5 },
  { item: 'Harbour brownie, malt ice', channel: 'takeaway', from: OPENING, price: 8.5 },
  { item: 'Harbour brownie, malt ice', channel: 'takeaway', from: SPRING, price: 9 },
  { item: 'Harbour brownie, malt ice', channel: 'delivery', from: OPENING, price: 11 },
  { item: 'Harbour brownie, malt ice', channel: 'delivery', from: SPRING, price: 11.5 },
];

export const MENU: readonly MenuStep[] = [
  ...STAYS.flatMap(([item, opening, spring]): readonly MenuStep[] => [
    { item, channel: 'dine_in', from: OPENING, price: opening },
    ...(spring === opening ? [] : [{ item, channel: 'dine_in' as const, from: SPRING, price: spring }]),
  ]),
  { item: 'Vanilla set cream', channel: 'dine_in', from: OPENING, price: 8.5 },
  { item: 'Vanilla set cream', channel: 'dine_in', from: SECOND_AUTUMN, price: 8.5, off: true },
  ...COMES_AND_GOES.flatMap(([item, from, to, price]): readonly MenuStep[] => [
    { item, channel: 'dine_in', from, price },
    ...(to === null ? [] : [{ item, channel: 'dine_in' as const, from: to, price, off: true as const }]),
  ]),
  ...OUT_OF_THE_HOUSE,
];

/** The price that guests pay on a day, tax inside; null where it is not on the menu. */
export function menuPriceOn(item: string, channel: string, day: string): number | null {
  const steps = MENU.filter((step) => step.item === item && step.channel === channel && step.from <= day);
  const latest = [...steps].sort((a, b) => a.from.localeCompare(b.from)).at(-1);
  return latest && !latest.off ? latest.price : null;
}
