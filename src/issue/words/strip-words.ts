/** What is written on strips, pockets and their sheets. */
import type { Axis } from "../../measure/axis.ts";
import { sayCount, sayList } from "./say-count.ts";

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

/** Such as `2 patterns and 1 plain division`. */
export function sayCarried(patterns: readonly { readonly isPlain?: true }[]): string {
  const plain = patterns.filter(({ isPlain }) => isPlain).length;
  const own = patterns.length - plain;
  const parts = [
    ...(own > 0 || plain === 0 ? [sayCount(own, "pattern")] : []),
    ...(plain > 0 ? [sayCount(plain, "plain division")] : []),
  ];
  return sayList(parts, "and");
}

/** For which days the patterns with dates are drawn; for their largest case where there are none. */
export function sayStripDays(letters: readonly string[], dates?: string): string {
  const named = letters.join(", ");
  return dates === undefined ? `no dates, largest case: ${named}` : `dates ${dates}`;
}

/** The same as a sentence, with the patterns' titles; nothing where no pattern has dates. */
export function sayDaysNote(titles: readonly string[], dates?: string): readonly string[] {
  if (dates !== undefined) return [`Patterns with dates are marked for ${dates}.`];
  if (titles.length === 0) return [];
  const verb = titles.length === 1 ? "is" : "are";
  return [
    `${sayList(titles, "and")} ${verb} marked for the largest case, with 31 days and six weeks in a month.`,
  ];
}

/** Which layouts of a strip are not there, and what came of that. */
export function sayMissingLayouts(slugs: readonly string[]): string {
  const named = sayList(
    slugs.map((slug) => `“${slug}”`),
    "and",
  );
  const [are, they] = slugs.length === 1 ? ["is", "it is"] : ["are", "they are"];
  return `${named} ${are} neither in this book nor kept on this device: ${they} left out of the strip.`;
}

/** What a drawing of a strip, or of one side of it, is called. */
export function sayStripTitle(strip: string, notebook: string, axis?: Axis): string {
  return `${strip} for ${notebook}${axis === undefined ? "" : `, ${axis}`}`;
}

/** What a drawing of a strip shows, for those who cannot see it. */
export function sayStripDrawing(
  patterns: readonly { readonly letter: string; readonly title: string }[],
): string {
  const named = patterns.map(({ letter, title }) => `${letter} ${title}`).join(", ");
  return `A ruler in actual size with the marks of ${named}.`;
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

/** What putting a layout on the strip came to. */
export function sayAddedToStrip(outcome: "added" | "there" | "full", count: number): string {
  const lie = `${sayCount(count, "layout")} ${count === 1 ? "is" : "are"} on it`;
  switch (outcome) {
    case "added":
      return `Added to your strip: ${lie} now.`;
    case "there":
      return `It is on your strip already: ${lie}.`;
    case "full":
      return "Your strip is full: take something off first.";
  }
}
