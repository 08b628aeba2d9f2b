/**
 * Whether the digits are a GTIN (8, 12, 13 or 14 digits) with the right check digit: from the right, digits weighed 1,
 * 3, 1, 3 ... add up to a multiple of ten (GS1 General Specifications, section 7.9).
 */
export function isGtin(digits: string): boolean {
  if (!/^(\d{8}|\d{12,14})$/.test(digits)) return false;
  const sum = [...digits]
    .reverse()
    .reduce((total, digit, place) => total + Number(digit) * (place % 2 === 0 ? 1 : 3), 0);
  return sum % 10 === 0;
}
