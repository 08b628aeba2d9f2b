/**
 * A GTIN-13 from its first twelve digits: the check digit makes the sum of the digits, weighted 1 and 3 from the left, a multiple
 * of ten (GS1 General Specifications, check digit calculation). Stems begin with 29, which GS1 leaves for use inside a business.
 */
export function gtin13(stem: string): string {
  const sum = [...stem].reduce((total, digit, at) => total + Number(digit) * (at % 2 === 0 ? 1 : 3), 0);
  return `${stem}${(10 - (sum % 10)) % 10}`;
}
