/** An exact decimal in its one shortest form. */
export const number = (column: string): string => `trim_scale(${column})::text`;

/** A fraction as per cent. */
export const perCent = (column: string): string => `trim_scale(${column} * 100)::text`;

export const day = (column: string): string => `to_char(${column}, 'YYYY-MM-DD')`;

export const yesNo = (condition: string): string =>
  `case when ${condition} then 'yes' when not (${condition}) then 'no' end`;

/** What was declared: none, or each word. */
export const list = (column: string): string =>
  `case when cardinality(${column}) = 0 then 'none' else array_to_string(${column}, ';') end`;
