import type { Line, Recipe } from '../shapes';

/** What guests choose of one course, in per cent: measured by hand for a fortnight after each change of menu. */
function course(choice: string, ...shares: readonly (readonly [dish: string, sharePct: number])[]): readonly Line[] {
  return shares.map(([dish, sharePct]) => [dish, 1, 'each', { choice, sharePct }]);
}

function lowTide(from: string, first: readonly Line[], second: readonly Line[]): Recipe {
  return { name: 'Low tide, two courses', kind: 'set_menu', from, section: 'Set menus', lines: [...first, ...second] };
}

function highTide(from: string, first: readonly Line[], third: readonly Line[]): Recipe {
  return {
    name: 'High tide, three courses and a glass',
    kind: 'set_menu',
    from,
    section: 'Set menus',
    lines: [
      ...first,
      ['Sea fret', 1, 'each'],
      ...third,
      ...course('Glass', ['Late-harvest white, glass', 60], ['Ice cider, glass', 40]),
    ],
  };
}

export const SET_MENUS: readonly Recipe[] = [
  lowTide(
    '2025-05-01',
    course('First', ['Three scoops', 45], ['Vanilla set cream', 55]),
    course('Second', ['Driftwood', 40], ['Lemon tart, scorched meringue', 35], ['Black cherry trifle', 25]),
  ),
  lowTide(
    '2025-10-01',
    course('First', ['Three scoops', 40], ['Vanilla set cream', 60]),
    course('Second', ['Driftwood', 40], ['Lemon tart, scorched meringue', 25], ['Ginger cake, poached quince', 35]),
  ),
  lowTide(
    '2026-03-04',
    course('First', ['Three scoops', 45], ['Vanilla set cream', 55]),
    course('Second', ['Driftwood', 35], ['Lemon tart, scorched meringue', 30], ['Rhubarb custard slice', 35]),
  ),
  lowTide(
    '2026-09-02',
    course('First', ['Three scoops', 50], ['Sea buckthorn posset', 50]),
    course('Second', ['Driftwood', 40], ['Lemon tart, scorched meringue', 25], ['Smoke and peat', 35]),
  ),
  highTide(
    '2025-05-01',
    course('First', ['Three scoops', 40], ['Strawberries, crème fraîche ice', 60]),
    course('Third', ['Marram slate', 65], ['Black cherry trifle', 35]),
  ),
  highTide(
    '2025-10-01',
    course('First', ['Three scoops', 40], ['Vanilla set cream', 60]),
    course('Third', ['Marram slate', 55], ['Hot orange pudding', 45]),
  ),
  highTide(
    '2026-03-04',
    course('First', ['Three scoops', 55], ['Vanilla set cream', 45]),
    course('Third', ['Marram slate', 60], ['Passion fruit pavé', 40]),
  ),
  highTide(
    '2026-09-02',
    course('First', ['Three scoops', 45], ['Sea buckthorn posset', 55]),
    course('Third', ['Marram slate', 60], ['Smoke and peat', 40]),
  ),
];
