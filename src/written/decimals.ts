/** How many decimals a written number has. */

/** Has a number more decimals than so many? Exact: a number with few is the one nearest to its own short form. */
export function hasMoreDecimals(value: number, decimals: number): boolean {
  return Number(value.toFixed(decimals)) !== value;
}
