/** What is written on strips, pockets and their sheets. */
import type { Axis } from "../../measure/axis.ts";

/** The number of the last position with its unit. */
export function sayTotal(steps: number): string {
  return `${steps} steps`;
}

/** Such as `Everyday strip · across · A5, 26 × 38`. */
export function sayStripHeading(strip: string, axis: Axis, notebook: string): string {
  return [strip, axis, notebook].join(" · ");
}

/** Where the counted middles of a strip's sides are, such as `middle: 13 across, 19 down`. */
export function sayMiddles(
  sides: readonly { readonly axis: Axis; readonly middles: readonly number[] }[],
  isPapersToo: boolean,
): string {
  const [only, ...others] = sides;
  const places = sides.map(({ axis, middles }) => `${middles.join(" and ")} ${axis}`).join(", ");
  const counted = only && others.length === 0 ? only.middles.join(" and ") : places;
  return `middle: ${counted}${isPapersToo ? ", the paper’s too" : ""}`;
}

/** The other entries of a strip's key. */
export const KEY_WORDS = {
  paperMiddle: "middle of the paper",
  pageEnd: "end of the page",
  countsBack: "small numbers: from the other end",
} as const;

/** What a drawing of a strip, or of one side of it, is called. */
export function sayStripTitle(strip: string, notebook: string, axis?: Axis): string {
  return `${strip} for ${notebook}${axis === undefined ? "" : `, ${axis}`}`;
}

/** What a drawing of a strip shows, for those who cannot see it. */
export function sayStripDrawing(
  patterns: readonly { readonly letter: string; readonly title: string }[],
): string {
  const named = patterns.map(({ letter, title }) => `${letter} ${title}`).join(", ");
  return `A ruler in true size with the marks of ${named}.`;
}

/** One of several pieces that are joined. */
export function sayPiece(title: string, number: number, count: number): string {
  return `${title}, piece ${number} of ${count}`;
}

/** What is written on a pocket, and what its drawing is called and shows. */
export const POCKET_WORDS = {
  glue: "glue",
  title: (strip: string, notebook: string) => `Pocket for ${strip}, ${notebook}`,
  front: (strip: string, notebook: string) => `${strip} · ${notebook}`,
  description: "A pocket to cut out, fold along the dashed lines and glue inside the cover.",
} as const;
