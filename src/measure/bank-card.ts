/** The one size that all bank and library cards have: ISO/IEC 7810, format ID-1. */

/**
 * In millimetres. Edges, corner (2.88 to 3.48) and thickness (0.76 ± 0.08) as public accounts of the standard have them.
 * How far the edges of an unused card may be off (85.47 to 85.72 and 53.92 to 54.03) is from memory.
 */
export const BANK_CARD = {
  long: 85.6,
  short: 53.98,
  corner: 3.18,
  thick: 0.76,
  off: { long: 0.125, short: 0.055, thick: 0.08 },
} as const;
