/** Recipe texts as they come about while somebody writes: real ones with things put in, left out and moved. */
import fc from "fast-check";

/** What slips in: signs of YAML, keys of a recipe in wrong places, numbers beyond every limit. */
const SCRAPS = [
  ...["{", "}", "[", "]", ":", ",", "-", "---", "\n", "  ", "\t", '"', "'", "#", "&a", "*a", "!!x"],
  ...[
    "rows: 7",
    "columns: {count: 200, gap: 400}",
    "rows: {tracks: []}",
    "share: 0.001",
    "same: x",
  ],
  ...["count: 1e9", "steps: -1", "min: 400", "max: 1", "gap: {min: 9, max: 1}", "repeat: 200"],
  ...["each: {rows: {count: 200, each: {columns: 200}}}", "null", "~", "0x10", "1_000", "\u0000"],
  ...[
    "otherwise: [{page: {}}]",
    "spread: {left: {}, right: {}}",
    "\ud800",
    "é",
    "\u202e",
    "<script>",
  ],
] as const;

/** One of some texts after up to eight slips, or nonsense altogether. */
export function wildRecipe(texts: readonly string[]): fc.Arbitrary<string> {
  const slip = fc.record({
    at: fc.double({ min: 0, max: 1, noNaN: true }),
    cut: fc.oneof(fc.constant(0), fc.integer({ min: 1, max: 40 })),
    put: fc.oneof(fc.constantFrom("", ...SCRAPS), fc.string({ maxLength: 8 })),
  });
  const slipped = fc
    .record({ text: fc.constantFrom(...texts), slips: fc.array(slip, { maxLength: 8 }) })
    .map(({ text, slips }) =>
      slips.reduce((before, { at, cut, put }) => {
        const from = Math.floor(at * before.length);
        return before.slice(0, from) + put + before.slice(from + cut);
      }, text),
    );
  const nonsense = fc
    .array(fc.oneof(fc.constantFrom(...SCRAPS), fc.string({ maxLength: 6 })), { maxLength: 40 })
    .map((scraps) => `---\n${scraps.join("")}\n---\n`);
  return fc.oneof({ arbitrary: slipped, weight: 5 }, { arbitrary: nonsense, weight: 1 });
}
