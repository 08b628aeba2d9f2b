/** Whether numbers of a locale are written with a decimal comma: what a person there means by 1,5. */
export function hasDecimalComma(locale: string): boolean {
  return new Intl.NumberFormat(locale)
    .formatToParts(1.5)
    .some(({ type, value }) => type === 'decimal' && value === ',');
}
