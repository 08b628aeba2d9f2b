/** A number rounded half away from zero to so many decimals. */
export function rounded(value: number, decimals: number): number {
  const scale = 10 ** decimals;
  return (Math.sign(value) * Math.round(Math.abs(value) * scale + 1e-9)) / scale;
}

/** Money as it stands in a file: 12.50. */
export function money(value: number): string {
  return rounded(value, 2).toFixed(2);
}
