/** Numbers as people type them into a field: figures, with a point or a comma before the decimals. */

export type TypedNumber =
  | { readonly kind: "number"; readonly number: number; readonly decimals: number }
  | { readonly kind: "none" };

/** The number, and how many decimals it has without empty ones; none for anything else, signs and exponents too. */
export function typedNumber(text: string): TypedNumber {
  const [, whole, decimals = ""] = TYPED.exec(text.trim()) ?? [];
  if (whole === undefined) return { kind: "none" };
  const kept = decimals.replace(/0+$/, "");
  return { kind: "number", number: Number(`${whole}.${kept}0`), decimals: kept.length };
}

const TYPED = /^(\d{1,7})(?:[.,](\d{1,20}))?$/;
