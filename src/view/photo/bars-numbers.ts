/** What a measured photo of the test sheet fills into the fields of a printer, and what is saved of it. */
import type { BarsFound, MeasuredBars } from "../../photo/bars-found.ts";
import type { Grey } from "../../photo/grey.ts";

/** Both lengths to a hundredth of a millimetre, as somebody would type them. */
export function barFields({ length }: MeasuredBars): { readonly x: string; readonly y: string } {
  return { x: rounded(length.x), y: rounded(length.y) };
}

function rounded(mm: number): string {
  return `${Number(mm.toFixed(2))}`;
}

/** All that was found, without the picture: for whoever meets a photo that fails. Pixels to a tenth. */
export function barsReport({ width, height }: Omit<Grey, "at">, found: BarsFound): string {
  const numbers = found.ok
    ? { measured: true, ...found.bars }
    : { measured: false, doubt: found.doubt, dots: found.found, sides: found.sides };
  const written = { form: 1, photo: { width, height }, ...numbers };
  return `${JSON.stringify(written, (_, value: unknown) =>
    typeof value === "number" ? Number(value.toFixed(3)) : value,
  )}\n`;
}
