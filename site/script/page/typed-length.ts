/** Lengths as people type them into a field: millimetres, or inches and parts of an inch, with their unit or without. */
import { typedNumber } from "./typed-number.ts";

export type TypedLength =
  | {
      readonly kind: "length";
      readonly mm: number;
      /** Of the millimetres, without empty ones. */
      readonly decimals: number;
      readonly unit: "mm" | "in";
      /** Is it just what was typed? Part of an inch may be no whole number of nanometres. */
      readonly isExact: boolean;
    }
  | { readonly kind: "none" };

/** An inch in nanometres: 25.4 mm exactly (international yard and pound agreement, 1959). */
const NM_PER_INCH = 25_400_000n;
const NM_PER_MM = 1_000_000;

/**
 * `5`, `5,0`, `5 mm`, `0.25 in`, `1/4 in`, `1 1/2 in`, also with `″` for `in`. A fraction has to say that it is of an
 * inch. Inches come out in whole nanometres, the nearest where none is exact.
 */
export function typedLength(text: string): TypedLength {
  const [, amount = "", unit = "mm"] = WITH_UNIT.exec(text.trim().toLowerCase()) ?? [];
  if (unit !== "mm") return typedInches(amount);
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

const WITH_UNIT = /^(.*?)\s*(mm|in|″|")?$/;

function typedInches(amount: string): TypedLength {
  const inches = ratioOf(amount);
  if (!inches) return { kind: "none" };
  const [over, under] = [inches.over * NM_PER_INCH, inches.under];
  const nanometres = (2n * over + under) / (2n * under);
  const mm = Number(nanometres) / NM_PER_MM;
  const decimals = `${mm}`.split(".")[1]?.length ?? 0;
  return { kind: "length", mm, decimals, unit: "in", isExact: over % under === 0n };
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
