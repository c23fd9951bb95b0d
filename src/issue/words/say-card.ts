/** The copying card in sentences, in the order in which a hand works: pencil first, then colours, and the blade last. */
import type { Axis } from "../../measure/axis.ts";
import type { StepInterval } from "../../measure/box.ts";
import { CUTTING_CAUTION } from "./cutting-caution.ts";
import { sayPositions, sayTracks } from "./say-positions.ts";

/** The title of the card and what it is for. */
export const CARD_WORDS = {
  title: (strip: string) => `Copying card: ${strip}`,
  description: "How to copy the strip by hand onto bands cut from the notebook's last leaves.",
  heading: { across: "Across", down: "Down" },
} as const;

/** A band that is ruled off on a leaf: where it lies, and what is counted on it. */
export interface CardBand {
  readonly axis: Axis;
  readonly leaf: "last" | "before";
  readonly start: "edge" | "dot";
  readonly end: "edge" | "dot";
  readonly steps: number;
  readonly middles: readonly number[];
}

/** Before any lane, a sentence or two each; `rows` are the rows of dots that the band is wide. */
export function sayCardOpening(
  { axis, leaf, start, end, steps, middles }: CardBand,
  rows: number,
): readonly string[] {
  const [along, first, last] = PLACES[axis];
  const zero = start === "edge" ? `the ${first} edge` : "the first dot";
  const total = end === "edge" ? `the ${last} edge` : "the last dot";
  return [
    `${LEAVES[leaf]}, rule off a band ${rows} dots wide along the ${along}. Do not cut it yet.`,
    `In pencil, number the dots: ${zero} is 0, ${total} is ${steps}.`,
    `Draw a small triangle at the middle, ${middles.join(" and ")}.`,
    "Now lane by lane, still in pencil. Where a tick is there already, make it longer.",
  ];
}

const PLACES: Readonly<Record<Axis, readonly [along: string, first: string, last: string]>> = {
  across: ["top", "left", "right"],
  down: ["side", "top", "bottom"],
};

const LEAVES: Readonly<Record<CardBand["leaf"], string>> = {
  last: "On the last leaf",
  before: "On the leaf before it, whose edges are whole",
};

/** What is drawn for one run: whose it is, with which pen, and where. */
export interface CardRunFacts {
  readonly titles: readonly string[];
  /** The pen's colour and its kind of line. */
  readonly pen: { readonly name: string; readonly stroke: string };
  readonly positions: readonly number[];
  readonly tracks: readonly StepInterval[];
}

/** One run: what it is, what to tick, what to write. Rows of dots are counted from the edge. */
export function sayCardRun({ titles, pen, positions, tracks }: CardRunFacts, row: number): string {
  return [
    `${titles.join(" and ")}: ${pen.name}, ${pen.stroke}.`,
    `Tick ${sayPositions(positions)}, from the edge to row ${row}.`,
    `${writeOn(tracks)}.`,
  ].join(" ");
}

/** `Write 5 on 1–6, 7–12; 2 on 13–15`, sizes in order of appearance. */
function writeOn(tracks: readonly StepInterval[]): string {
  const sizes = [...new Set(tracks.map(({ length }) => length))];
  const parts = sizes.map((size) => {
    const alike = tracks.filter(({ length }) => length === size);
    return `${size} on ${sayTracks(alike)}`;
  });
  return `Write ${parts.join("; ")}`;
}

/** After the last lane; the caution stands before the cut. */
export const CARD_CLOSING: readonly string[] = [
  "Go over the pencil in the colours and write each letter at the start of its lane.",
  `${CUTTING_CAUTION.head} ${CUTTING_CAUTION.words}`,
  "Now cut each band off along the line that you ruled.",
];
