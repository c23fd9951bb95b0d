/** A length or a number as it is typed: millimetres, centimetres, inches and fractions of them. */
export type TypedLength =
  | {
      readonly kind: "length";
      readonly mm: number;
      /** Of the millimetres, without empty ones. */
      readonly decimals: number;
      readonly unit: "mm" | "cm" | "in";
      /** Is it just what was typed? Part of an inch may be no whole number of nanometres. */
      readonly isExact: boolean;
    }
  | { readonly kind: "none" };

/** In nanometres. An inch is 25.4 mm exactly (international yard and pound agreement, 1959). */
const NM_PER = { cm: 10_000_000n, in: 25_400_000n } as const;
const NM_PER_MM = 1_000_000;

/** More than anybody types into the field of a length. */
const LONGEST = 60;

/**
 * `5`, `5,0`, `5 mm`, `0.5 cm`, `0.25 in`, `1/4 in`, `1½ in`, also with `″` or another mark for `in`. A fraction has to
 * say what it is of. Inches come out in whole nanometres, the nearest where none is exact.
 */
export function typedLength(text: string): TypedLength {
  if (text.length > LONGEST) return { kind: "none" };
  const plain = text.replace(VULGAR, (fraction) => ` ${fraction.normalize("NFKC")}`);
  const [, amount = "", named = "mm"] = WITH_UNIT.exec(plain.trim().toLowerCase()) ?? [];
  const unit = named === "mm" || named === "cm" ? named : "in";
  if (unit !== "mm") return typedParts(amount.trim(), unit);
  const typed = typedNumber(amount);
  if (typed.kind === "none") return typed;
  const { number: mm, decimals } = typed;
  return { kind: "length", mm, decimals, unit: "mm", isExact: true };
}

/** How it was read, where it was not simply typed as millimetres: `1/4 in is 6.35 mm.`; "" where there is nothing to say. */
export function sayTypedLength(text: string): string {
  const typed = typedLength(text);
  const plain = text.trim();
  if (typed.kind === "none" || plain === `${typed.mm}`) return "";
  if (typed.unit === "mm") return `Read as ${typed.mm} mm.`;
  return `${plain} is ${typed.isExact ? "" : "nearly "}${typed.mm} mm.`;
}

const WITH_UNIT = /^(.*?)\s*(mm|cm|in|inch|inches|″|”|")?$/;

/** `½` and its like. */
const VULGAR = /[¼-¾⅐-⅞]/g;

function typedParts(amount: string, unit: keyof typeof NM_PER): TypedLength {
  const units = ratioOf(amount);
  if (!units) return { kind: "none" };
  const [over, under] = [units.over * NM_PER[unit], units.under];
  const nanometres = (2n * over + under) / (2n * under);
  const mm = Number(nanometres) / NM_PER_MM;
  const decimals = `${mm}`.split(".")[1]?.length ?? 0;
  return { kind: "length", mm, decimals, unit, isExact: over % under === 0n };
}

interface Ratio {
  readonly over: bigint;
  readonly under: bigint;
}

/** `0.25`, `1/4` or `1 1/2` as one whole number over another. */
function ratioOf(amount: string): Ratio | undefined {
  const [fraction, whole = "0", part = "", parts = ""] = FRACTION.exec(amount) ?? [];
  if (fraction !== undefined) {
    const under = BigInt(parts);
    return under > 0n ? { over: BigInt(whole) * under + BigInt(part), under } : undefined;
  }
  const [, before, decimals = ""] = DECIMAL.exec(amount) ?? [];
  if (before === undefined) return undefined;
  return { over: BigInt(`${before}${decimals}`), under: 10n ** BigInt(decimals.length) };
}

const FRACTION = /^(?:(\d{1,4})\s+)?(\d{1,4})\s*[/⁄]\s*(\d{1,4})$/;
const DECIMAL = /^(\d{1,4})(?:[.,](\d{1,20}))?$/;

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
