/** A strip on a notebook, finished: its drawings, its file, its sheets, and the words that depend on the notebook. */
import { cardScene } from "../../draw/card/card-scene.ts";
import { CLOSING_STEPS } from "../../draw/card/card-steps.ts";
import { pixelsOf } from "../../draw/scene.ts";
import { finishedSize, stripNotes } from "../../draw/strip/strip-body.ts";
import { stripScene } from "../../draw/strip/strip-scene.ts";
import type { WriteSvg } from "../../draw/svg/write-svg.ts";
import type { LabelAt } from "../../issue/words/say-path.ts";
import { sayStripNote } from "../../issue/words/say-strip-note.ts";
import { sayCarried, sayDaysNote } from "../../issue/words/strip-words.ts";
import type { PrinterCorrection } from "../../print/printer-correction.ts";
import { attemptOf, labelsOf } from "../../recipe/area-tree.ts";
import { copyingCard } from "../../strip/copying-card.ts";
import type { Strip } from "../../strip/strip.ts";
import { stripJsonText } from "../../strip/strip-json.ts";
import type { Planner } from "../planner.ts";
import { stripPictures } from "./strip-sheet-drawings.ts";
import { cardLine, stripPatternView, stripSideView } from "./strip-side-view.ts";
import type { StripPair, StripView } from "./strip-view.ts";

export interface StripSources {
  readonly planner: Planner;
  readonly write: WriteSvg;
  readonly printer?: PrinterCorrection;
}

/** Works a strip out for a notebook and draws it in every way in which it is used. */
export function makeStripView(pair: StripPair, sources: StripSources): StripView {
  const { planner, write } = sources;
  const strip = planner.stripOn(pair.strip, pair.notebook);
  const drawing = stripScene(strip);
  const { length, width } = finishedSize(strip);
  const cards = copyingCard(strip);
  const card = cardScene(strip);
  const sheets = stripPictures(strip, sources);
  const largest = strip.patterns.flatMap(({ title, isLargest }) => (isLargest ? [title] : []));
  const labelsIn = labelsOnStrip(strip, pair.notebook, planner);
  return {
    stripSvg: write(drawing),
    cardSvg: write(card),
    cardPicture: pixelsOf(card.frame),
    stripJson: stripJsonText(strip),
    stripParts: stripParts(strip),
    picture: pixelsOf(drawing.frame),
    length: tenths(length),
    width: tenths(width),
    patterns: strip.patterns.map(stripPatternView),
    carries: sayCarried(strip.patterns),
    sides: strip.sides.flatMap((side, index) => {
      const told = cards[index];
      return told ? [stripSideView(side, told, { strip, write, labelsIn })] : [];
    }),
    sheets,
    closing: CLOSING_STEPS.map(cardLine),
    notes: [
      ...sayDaysNote(largest, strip.dates),
      ...stripNotes(strip).map(sayStripNote),
      ...sheets.notes,
    ],
  };
}

/**
 * Of the attempt that is drawn, or that was meant. A plain division is no pattern, and what is drawn for several spans of
 * days has another label for each.
 */
function labelsOnStrip(strip: Strip, notebook: string, planner: Planner) {
  const plain = new Set(strip.patterns.flatMap(({ slug, isPlain }) => (isPlain ? [slug] : [])));
  return (pattern: string): LabelAt => {
    if (plain.has(pattern) || (strip.dates && planner.recipe(pattern).dates))
      return () => undefined;
    const plan = planner.planOf(pattern, notebook);
    return labelsOf(attemptOf(plan.recipe, plan.fits ? plan.used : 0));
  };
}

/** As it may stand in a page: a title cannot end the element around it. */
function stripParts(strip: Strip): string {
  const sides = strip.sides.map((side) => {
    return { ...side, leftOut: [], asked: { ...side.asked, runs: [] } };
  });
  return JSON.stringify({ ...strip, sides }).replaceAll("<", "\\u003c");
}

function tenths(mm: number): number {
  return Math.round(mm * 10) / 10;
}
