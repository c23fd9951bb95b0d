/** What the small figures are called, and the words for those who cannot see them. */
import { asSentence } from "./say-count.ts";
import { sayParts } from "./say-division.ts";

/** Equal parts of one length, in steps. */
interface Parts {
  readonly count: number;
  readonly part: number;
  readonly leftover: number;
}

/** The divisions that leave nothing over. */
export function sayEvenDivisions(even: readonly Pick<Parts, "count" | "part">[]): string {
  const parts = even.map(({ count, part }) => `${count} × ${part}`);
  return parts.length > 0
    ? `Nothing left over: ${parts.join(", ")}.`
    : "Every division leaves something over.";
}

/** A length and what each of some divisions makes of it. */
export function sayDivisions(steps: number, divisions: readonly Parts[]): string {
  const parts = divisions.map(
    ({ count, part, leftover }) => `${count} × ${part}${leftover > 0 ? `, ${leftover} over` : ""}`,
  );
  return `${[`${steps} steps`, ...parts].join("; ")}.`;
}

/** What a split's drawing is called. */
export function saySplitTitle(length: number, parts: number, notebook: string): string {
  return `${length} steps in ${parts} parts, on ${notebook}`;
}

const BEFORE = { track: "", gap: "gap of ", leftover: "left over " } as const;

/** Everything a split is made of, in its order. */
export function saySplitParts(
  parts: readonly { readonly kind: keyof typeof BEFORE; readonly length: number }[],
): string {
  return `${parts.map(({ kind, length }) => `${BEFORE[kind]}${length}`).join(", ")}.`;
}

/** What stands over the steps that a way of counting finds. */
export function sayWay(words: string, steps: number): string {
  return `${words}: ${steps} steps`;
}

/** What a row of counted dots is called. */
export function sayCountedTitle(dots: number): string {
  return `${dots} dots, counted`;
}

/** A row of dots on a notebook, and what each way of counting finds there. */
export function sayCounted(dots: number, notebook: string, ways: readonly string[]): string {
  return `A row of ${dots} dots on ${notebook}. ${ways.join(". ")}.`;
}

/** The two bars that a printed sheet is checked with; the card in millimetres. */
export const BARS_WORDS = {
  title: "Two bars of 100 mm with a bank card in their corner",
  description: ({ across, down }: { readonly across: number; readonly down: number }) =>
    `The bars run right and up from one corner. A card of ${across} by ${down} mm reaches to a long tick on each.`,
  names: { across: "one side", down: "the other" },
  card: "a bank card",
} as const;

/** Numbers from both sides of a row of steps. */
export function sayBothWays(
  steps: number,
  notebook: string,
): { readonly title: string; readonly description: string } {
  return {
    title: `${steps} steps, numbered both ways`,
    description: `On ${notebook} the numbers above run from 0 at the left to ${steps}, those below from 0 at the right to ${steps}.`,
  };
}

/** The chart for choosing a notebook. */
export const EVEN_CHART_WORDS = {
  title: (fewest: number, most: number) => `What divides evenly, of ${fewest} to ${most} steps`,
  parts: (count: number) => asSentence(sayParts(count)),
  gap: (gap: number) => (gap === 0 ? "no gap" : `gap ${gap}`),
} as const;

/** The lengths that a division comes out even on. */
export function sayEvenLengths(
  { count, gap }: { readonly count: number; readonly gap: number },
  lengths: readonly number[],
): string {
  return `${EVEN_CHART_WORDS.parts(count)}, ${EVEN_CHART_WORDS.gap(gap)}: ${lengths.join(", ")}.`;
}

/** What is worth writing on the end of a strip. */
export const STRIP_END_WORDS = {
  title: "The end of a strip, sticking out of its pocket",
  description: "On the end stand the notebook, how it is counted, where 0 is, and the date.",
  pocket: "pocket",
  lines: ["A5, 26 × 38", "counted from the edge", "0 at the left", "made in March 2027"],
} as const;
