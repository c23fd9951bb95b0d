/** The tab behind the page's end: which letter, colour and dash is which pattern, and what the middles are. */
import { toMm } from "../../measure/length.ts";
import { patternsOfRun } from "../../strip/pattern-of.ts";
import type { StripPattern } from "../../strip/strip.ts";
import type { TextMark } from "../scene.ts";
import { textWidth } from "../text-width.ts";
import type { Face } from "./strip-face.ts";
import type { StripMark } from "./strip-mark.ts";
import { arrow, hasOwnPaperMiddle } from "./strip-middles.ts";
import { scaleEnd } from "./strip-numbers.ts";

const SIZE = 2;
const LINE_HEIGHT = 2.8;
const TOP = 1;
/** From the page's end to the tab, between its columns, and behind the last. */
const SPACE = 2;
const LETTER_WIDTH = 2.6;
const SWATCH = 6;
const LONGEST = 34;

/** One line of the tab: a sign and what it means. */
interface Entry {
  readonly sign: (x: number, y: number) => readonly StripMark[];
  readonly signWidth: number;
  readonly role: "note" | "heading";
  readonly text: string;
}

/** The tab's marks and where it ends, in millimetres from the page's edge. */
export interface Legend {
  readonly marks: readonly StripMark[];
  readonly end: number;
}

/** The tab, in as many columns as the face's height makes necessary. */
export function legendOf(face: Face): Legend {
  const start = Math.max(toMm(face.side.grid.paper), scaleEnd(face)) + SPACE;
  const rows = Math.max(1, Math.floor((face.height - 2 * TOP) / LINE_HEIGHT));
  const entries = entriesOf(face);
  const columns = Array.from({ length: Math.ceil(entries.length / rows) }, (_, index) =>
    entries.slice(index * rows, (index + 1) * rows),
  );
  return columns.reduce<Legend>(
    ({ marks, end }, column) => ({
      marks: [...marks, ...column.flatMap((entry, row) => entryMarks(entry, end, row))],
      end: end + Math.max(...column.map(entryWidth)) + SPACE,
    }),
    { marks: [], end: start },
  );
}

function entriesOf(face: Face): readonly Entry[] {
  const { side, strip } = face;
  const runs = side.lanes.flatMap((lane) => lane.runs);
  const marked = new Set(runs.flatMap((run) => patternsOfRun(run, strip.patterns)));
  const heading: Entry = {
    sign: () => [],
    signWidth: 0,
    role: "heading",
    text: stripHeading(face),
  };
  return [
    ...(face.hasTitleBand ? [] : [heading]),
    ...strip.patterns.filter((pattern) => marked.has(pattern)).map(patternEntry),
    middleEntry(face),
    ...(hasOwnPaperMiddle(side) ? [paperMiddleEntry()] : []),
    ...(face.countsBack ? [textEntry("small numbers: from the other end")] : []),
  ];
}

function textEntry(text: string): Entry {
  return { sign: () => [], signWidth: 0, role: "note", text };
}

function patternEntry({ letter, colour, title }: StripPattern): Entry {
  return {
    sign: (x, y) => [
      { kind: "text", role: "lane-letter", x, y, size: SIZE, anchor: "start", text: letter },
      {
        kind: "lines",
        role: "lane-bar",
        lane: colour,
        lines: [[x + LETTER_WIDTH, y - 0.7, x + LETTER_WIDTH + SWATCH, y - 0.7]],
      },
    ],
    signWidth: LETTER_WIDTH + SWATCH + 1,
    role: "note",
    text: shortened(title),
  };
}

function middleEntry({ side }: Face): Entry {
  return {
    sign: arrowSign("middle"),
    signWidth: 2.4,
    role: "note",
    text: `middle, at ${side.middles.join(" and ")}${hasOwnPaperMiddle(side) ? "" : ", the paper's too"}`,
  };
}

function paperMiddleEntry(): Entry {
  return {
    sign: arrowSign("paper-middle"),
    signWidth: 2.4,
    role: "note",
    text: "middle of the paper",
  };
}

function arrowSign(role: "middle" | "paper-middle"): Entry["sign"] {
  return (x, y) => [{ kind: "outlines", role, outlines: [arrow(x + 0.8, y - 1.45)] }];
}

function entryMarks(entry: Entry, x: number, row: number): readonly StripMark[] {
  const y = TOP + (row + 0.75) * LINE_HEIGHT;
  const text: TextMark = {
    kind: "text",
    role: entry.role,
    x: x + entry.signWidth,
    y,
    size: SIZE,
    anchor: "start",
    text: entry.text,
  };
  return [...entry.sign(x, y), text];
}

function entryWidth(entry: Entry): number {
  return (
    entry.signWidth + textWidth(entry.text, SIZE, entry.role === "heading" ? "bold" : "normal")
  );
}

/** A title that would make the tab too long ends in an ellipsis. */
function shortened(title: string): string {
  if (textWidth(title, SIZE) <= LONGEST) return title;
  const letters = [...title];
  const fitting = letters.findLastIndex(
    (_, index) => textWidth(`${letters.slice(0, index).join("")}…`, SIZE) <= LONGEST,
  );
  return `${letters.slice(0, Math.max(1, fitting)).join("").trimEnd()}…`;
}

/** Such as `Everyday strip · across · A5, 26 × 38`. */
export function stripHeading({ strip, side }: Face): string {
  return [strip.title, side.axis, strip.notebook.title].join(" · ");
}
