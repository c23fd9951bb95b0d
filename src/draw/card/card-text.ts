/** Instructions as lines of text, broken to a width, each with a sign at its head. */
import { lineData } from "../geometry/path-data.ts";
import { breakLines } from "../label/text-block.ts";
import type { Mark } from "../scene.ts";
import type { CardStep } from "./card-steps.ts";

/** In millimetres. */
export interface TextPlace {
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

const SIZE = 2.7;
const LINE_HEIGHT = 3.6;
const BETWEEN = 0.9;
/** Where text begins, behind its sign: a run's label above its line, or a dash. */
const INDENT = 12;
const SWATCH = 10;

/** The marks, and how much of the page they take. */
export function cardText(
  steps: readonly CardStep[],
  { x, y, width }: TextPlace,
): { readonly marks: readonly Mark[]; readonly height: number } {
  const blocks = steps.map((step) => {
    const indent = step.run === undefined ? 0 : INDENT;
    return { step, indent, lines: breakLines(step.text, SIZE, width - indent) };
  });
  let top = 0;
  const marks = blocks.flatMap(({ step, indent, lines }): readonly Mark[] => {
    const first = y + top + SIZE;
    top += lines.length * LINE_HEIGHT + BETWEEN;
    return [
      ...signOf(step, x, first),
      ...lines.map((text, index): Mark => {
        const place = { x: x + indent, y: first + index * LINE_HEIGHT, size: SIZE };
        return { kind: "text", role: "note", ...place, anchor: "start", text };
      }),
    ];
  });
  return { marks, height: top };
}

/** A run's label with its line below. */
function signOf({ run }: CardStep, x: number, y: number): readonly Mark[] {
  if (run === undefined) return [];
  const below = y + LINE_HEIGHT - SIZE / 3;
  return [
    { kind: "text", role: "lane-letter", x, y, size: SIZE, anchor: "start", text: run.label },
    {
      kind: "path",
      role: "lane-bar",
      lane: run.colour,
      d: lineData(x, below, x + SWATCH, below),
    },
  ];
}
