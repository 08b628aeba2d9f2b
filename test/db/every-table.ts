import type { VenueTx } from '@/lib/db/in-venue';

/** Writes one row into every table of a venue, the dated ones on the given days (ISO), one after the other. */
export async function everyTable(tx: VenueTx, days: readonly string[]): Promise<void> {
  const { bulk, venue } = tx;
  const write = async (text: string, values: readonly unknown[] = []) => {
    const { rows } = await bulk.query<{ id: number }>(text, [venue, ...values]);
    return rows[0]?.id;
  };
  const plum = await write(
    `insert into item (venue_id, kind, name, name_key) values ($1, 'ingredient', 'Plum', 'plum') returning id`,
  );
  const tart = await write(
    `insert into item (venue_id, kind, name, name_key) values ($1, 'dish', 'Tart', 'tart') returning id`,
  );
  const farm = await write(
    `insert into supplier (venue_id, name, name_key) values ($1, 'Hill Farm', 'hill farm') returning id`,
  );
  await write(
    `insert into named_measure (venue_id, item_id, name, name_key, quantity, unit) values ($1, $2, 'punnet', 'punnet', 400, 'g')`,
    [plum],
  );
  const offer = await write(
    `insert into offer (venue_id, supplier_id, code, code_key, item_id, pack_count, pack_size, pack_unit)
     values ($1, $2, 'P1', 'p1', $3, 1, 5, 'kg') returning id`,
    [farm, plum],
  );
  const load = await write(
    `insert into load (venue_id, kind, source, file, digest, person) values ($1, 'sales', 'book', 'sales.csv', '', 'ada') returning id`,
  );
  await write(`insert into load_file (venue_id, load_id, chunk, bytes) values ($1, $2, 0, '')`, [load]);
  await write(
    `insert into waiting_row (venue_id, load_id, kind, source, line, raw, rule) values ($1, $2, 'sales', 'book', 2, '{}', 'number')`,
    [load],
  );
  await write(
    `insert into part (venue_id, item_id, name, name_key, output_quantity, output_unit, cost_share) values ($1, $2, 'stone', 'stone', 9, 'g', 0)`,
    [plum],
  );
  await write(
    `insert into yield_use (venue_id, item_id, name, name_key, usable_yield) values ($1, $2, 'juice', 'juice', 0.5)`,
    [plum],
  );
  for (const day of days) {
    await write(
      `insert into labour_rate (venue_id, grade, grade_key, valid_from, cost_per_hour) values ($1, 'Commis', 'commis', $2, 19)`,
      [day],
    );
    await write(`insert into exchange_rate (venue_id, currency, valid_from, rate) values ($1, 'GBP', $2, 1.15)`, [day]);
    await write(
      `insert into purchase_line (venue_id, load_id, line, scope, day, supplier_id, invoice, offer_id, packs, amount)
       values ($1, $2, 2, 'hill farm|7', $4, $3, '7', $5, 2, 24)`,
      [load, farm, day, offer],
    );
    await write(
      `insert into stock_count (venue_id, load_id, line, scope, day, item_id, quantity, unit) values ($1, $2, 2, 'plum||', $4, $3, 4, 'kg')`,
      [load, plum, day],
    );
    await write(
      `insert into stock_move (venue_id, load_id, line, day, item_id, quantity, unit, reason) values ($1, $2, 2, $4, $3, 1, 'kg', 'spoiled')`,
      [load, plum, day],
    );
    const trial = await write(
      `insert into trial (venue_id, item_id, day, hours, grade) values ($1, $2, $3, 3, 'Commis') returning id`,
      [tart, day],
    );
    await write(
      `insert into trial_line (venue_id, trial_id, position, item_id, quantity, unit) values ($1, $2, 1, $3, 200, 'g')`,
      [trial, plum],
    );
    await write(`insert into ingredient_version (venue_id, item_id, valid_from, measure) values ($1, $2, $3, 'g')`, [
      plum,
      day,
    ]);
    await write(`insert into offer_choice (venue_id, item_id, offer_id, valid_from) values ($1, $2, $3, $4)`, [
      plum,
      offer,
      day,
    ]);
    await write(
      `insert into price_point (venue_id, offer_id, kind, valid_from, price) values ($1, $2, 'list', $3, 12)`,
      [offer, day],
    );
    const version = await write(
      `insert into recipe_version (venue_id, item_id, valid_from) values ($1, $2, $3) returning id`,
      [tart, day],
    );
    await write(
      `insert into recipe_line (venue_id, version_id, position, item_id, quantity, unit) values ($1, $2, 1, $3, 80, 'g')`,
      [version, plum],
    );
    await write(
      `insert into menu_price (venue_id, item_id, channel, valid_from, price, tax, tax_included) values ($1, $2, 'dine_in', $3, 9, 0.09, true)`,
      [tart, day],
    );
    await write(
      `insert into load_scope (venue_id, kind, source, day, load_id, live) values ($1, 'sales', 'book', $3, $2, true)`,
      [load, day],
    );
    await write(
      `insert into sales_day (venue_id, load_id, day, item_id, channel, rows, sold) values ($1, $2, $4, $3, 'dine_in', 1, 5)`,
      [load, tart, day],
    );
    await write(`insert into covers_day (venue_id, load_id, day, covers) values ($1, $2, $3, 40)`, [load, day]);
  }
}
