/** Takes single values out of fields; what is not valid is noted with what is wanted there. */
import type { FieldIssue } from "../../issue/facts/field-issue.ts";
import type { ValueType, ValueTypeOf } from "../../issue/facts/value-type.ts";
import { foulCharacter } from "../../source/schema/forbidden-character.ts";
import { isSlug } from "../../source/slug.ts";
import { slugFault } from "./slug-for.ts";
import { typedLength, typedNumber } from "./typed-length.ts";

/** What one field holds, what it should, and where its problem goes. */
export interface Taken<Field extends string, W extends ValueType> {
  readonly field: Field;
  readonly text: string;
  readonly expected: W;
  readonly note: (issue: FieldIssue<Field>) => void;
}

/** Millimetres are kept to a millionth. */
const MM_DECIMALS = 6;

/** A whole number within its limits. */
export function takeWholeField<F extends string>(
  taken: Taken<F, ValueTypeOf<"whole">>,
): number | undefined {
  const { field, expected, note } = taken;
  const typed = typedNumber(taken.text);
  if (typed.kind === "number" && typed.decimals === 0 && isWithin(typed.number, expected))
    return typed.number;
  note({ field, kind: "unsuitable", expected });
  return undefined;
}

/** Millimetres within their limits, however the length was typed. */
export function takeMmField<F extends string>(
  taken: Taken<F, ValueTypeOf<"millimetres">>,
): number | undefined {
  const { field, expected, note } = taken;
  const typed = typedLength(taken.text);
  if (typed.kind === "none" || !isWithin(typed.mm, expected))
    note({ field, kind: "unsuitable", expected });
  else if (typed.decimals > MM_DECIMALS)
    note({ field, kind: "too-many-decimals", decimals: MM_DECIMALS });
  else return typed.mm;
  return undefined;
}

/** One of the allowed words. */
export function takeChoiceField<F extends string, T extends string>(
  taken: Omit<Taken<F, ValueTypeOf<"choice">>, "expected"> & { readonly allowed: readonly T[] },
): T | undefined {
  const { field, text, allowed, note } = taken;
  const chosen = allowed.find((word) => word === text);
  if (chosen === undefined)
    note({ field, kind: "unsuitable", expected: { kind: "choice", allowed } });
  return chosen;
}

/** One line of text; nothing where the field is empty. */
export function takeTextField<F extends string>(
  taken: Taken<F, ValueTypeOf<"text">>,
): string | undefined {
  const { field, expected, note } = taken;
  const text = taken.text.trim();
  if (foulCharacter(text) !== undefined) note({ field, kind: "control-character" });
  else if (text.length > expected.longest) note({ field, kind: "unsuitable", expected });
  else if (text !== "") return text;
  return undefined;
}

/** A file's name without its ending; "" where the field is empty. */
export function takeSlugField<F extends string>({
  field,
  text,
  note,
}: Omit<Taken<F, ValueType>, "expected">): string {
  const slug = text.trim();
  if (slug === "" || isSlug(slug)) return slug;
  note(slugFault(field, slug));
  return "";
}

function isWithin(
  number: number,
  { min, max }: { readonly min: number; readonly max: number },
): boolean {
  return number >= min && number <= max;
}
