/** Lengths on paper, kept as whole nanometres so that sums and halves stay exact, and their millimetres. */

declare const unit: unique symbol;

/** A length in whole nanometres. Six decimals of a millimetre are exact in it. */
export type Length = number & { readonly [unit]: "nm" };

/** A length in millimetres: only for output and drawing, never for a decision. */
export type Mm = number & { readonly [unit]: "mm" };

const NM_PER_MM = 1_000_000;
const NM_PER_HUNDREDTH = NM_PER_MM / 100;

/** Whole nanometres; a fraction of one is rounded away. */
export function length(nanometres: number): Length {
  return Math.round(nanometres) as Length;
}

/** A written number of millimetres as a length, exact to six decimals. */
export function fromMm(millimetres: number): Length {
  return length(millimetres * NM_PER_MM);
}

/** A length in millimetres, rounded correctly to the nearest number that the machine has. */
export function toMm(value: Length): Mm {
  return (value / NM_PER_MM) as Mm;
}

/**
 * Millimetres to two decimals, as they are said: a half is rounded up. Rounded as whole nanometres, since the machine's
 * own 27.665 lies a little below it.
 */
export function roundedMm(millimetres: number): number {
  return Math.floor((fromMm(millimetres) + NM_PER_HUNDREDTH / 2) / NM_PER_HUNDREDTH) / 100;
}
