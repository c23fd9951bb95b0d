/** What the small figures are called, and the words for those who cannot see them. */

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
    : "Always something left over.";
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
