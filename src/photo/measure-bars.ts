/** Measures the bars of a photographed test sheet by the card that lies on it, or says why it does not. */
import type { BarMarks, BarsDoubt, BarsFound, UnsureBy } from "./bars-found.ts";
import type { Focal, Stretch } from "./camera-over.ts";
import { cardEdges, type SideLines } from "./card-edges.ts";
import { type CardLines, isFaint, type SeenSheet } from "./card-model.ts";
import {
  besideCard,
  CARD_SIDES,
  type CardSide,
  edgeReach,
  pixelsPerMm,
  seenOnSheet,
} from "./card-sides.ts";
import { dotWidth } from "./dot-width.ts";
import type { EdgeLine } from "./edge-lines.ts";
import { type FoundSheet, findSheet } from "./find-sheet.ts";
import type { Grey, PhotoPoint } from "./grey.ts";
import type { PlaneView } from "./plane-view.ts";
import { barEnd, seenPart } from "./seen-bars.ts";
import { isSharp } from "./sharpness.ts";
import { type SolvedCard, solveCard } from "./solve-card.ts";
import { SHEET_BARS } from "./test-sheet.ts";

/** Fewer pixels for a millimetre are not enough. */
const LEAST_PER_MM = 3.5;
/** So much of each bar is seen at least. */
const LEAST_BAR = 0.6;
/** Half of the dots of a flat sheet lie no farther off than so many steps; noise alone comes to half of that. */
const MOST_OFF = 0.006;
/** A sheet that rises below the card brings it nearer: by that part of itself for each step that dots are off (computed). */
const CURLED = 0.15;
/** All that is off adds up to this at most: one of a thousand is more (table of chi-square, three degrees, from memory). */
const MOST_MISFIT = 16.3;
/** Another choice of lines is as good where its misfit is that near to the best one's; then both must say the same. */
const AS_GOOD = 9;
const SAME = 0.001;
/** A part of the length: what is less sure is not told. */
const SURE = 0.003;
/** Nineteen of twenty lie within so many standard deviations. */
const DEVIATIONS = 2;
/** No printer stretches by more. */
const LIKELY = { least: 0.9, most: 1.1 };
/** What is to blame where a length is not sure: a side so much softer than print, more askew, or nearer than this. */
const SHADED = 1.2;
const ASKEW = 8;
const NEAR = 250;
/** Finding the dots is that part of the work. */
const PART = 0.8;

/** Gives now and then what part of the work is done. `focal` is what the camera says of itself. */
export function* measureBars(photo: Grey, focal?: Focal): Generator<number, BarsFound> {
  const finding = findSheet(photo);
  let step = finding.next();
  while (!step.done) {
    yield step.value * PART;
    step = finding.next();
  }
  yield PART;
  const sheet = step.value;
  if (!("view" in sheet)) {
    const doubt: BarsDoubt = isSharp(photo)
      ? { kind: "no-sheet", dots: sheet.found.length }
      : { kind: "blurred" };
    return { ok: false, doubt, found: sheet.found, sides: [] };
  }
  return measureOn(photo, sheet, focal);
}

/** By the card that lies on a sheet which is found already. */
export function measureOn(
  photo: Grey,
  { view, dots, residual }: FoundSheet,
  focal?: Focal,
): BarsFound {
  const refused = (doubt: BarsDoubt, sides: BarMarks["sides"] = []): BarsFound => ({
    ...{ ok: false, doubt, found: dots, sides },
  });
  const perMm = pixelsPerMm(view);
  if (!(perMm >= LEAST_PER_MM)) return refused({ kind: "small", perMm });
  const parts = (["x", "y"] as const).map((bar) => ({ bar, part: seenPart(photo, view, bar) }));
  const edges = cardEdges(photo, view);
  if (!edges || parts.some(({ part }) => part === undefined)) return refused({ kind: "cut-off" });
  const sides = edges.flatMap(({ side, lines: [outer] }) =>
    outer ? [seenSide(view, side, outer)] : [],
  );
  const faint = parts.filter(({ part = 0 }) => part < LEAST_BAR).map(({ bar }) => bar);
  if (faint.length > 0) return refused({ kind: "no-bars", bars: faint }, sides);
  if (residual > MOST_OFF) return refused({ kind: "not-flat" }, sides);
  const missing = edges.filter(({ lines }) => lines.length === 0).map(({ side }) => side);
  if (missing.length === CARD_SIDES.length) return refused({ kind: "no-card" });
  if (missing.length > 0) return refused({ kind: "hidden", sides: missing }, sides);
  const softness = dotWidth(photo, view) ?? 0;
  const sheet = { view, perMm, softness, ...(focal && { focal }) };
  const solved = bestCard(edges, sheet);
  if ("kind" in solved) return refused(solved, sides);
  const { stretch, camera } = solved.card;
  const off = {
    x: Math.hypot(solved.card.off.x, CURLED * residual),
    y: Math.hypot(solved.card.off.y, CURLED * residual),
  };
  const doubt = doubtOf({ ...solved, card: { ...solved.card, off } }, sheet);
  if (doubt) return refused(doubt, sides);
  const marks = marksOf(view, { dots, lines: solved.lines });
  const bars = {
    length: times(stretch, SHEET_BARS.length),
    off: times(off, DEVIATIONS * SHEET_BARS.length),
  };
  return { ok: true, bars: { ...bars, camera, marks } };
}

function times({ x, y }: Stretch, by: number): Stretch {
  return { x: x * by, y: y * by };
}

interface Chosen {
  readonly lines: CardLines;
  readonly card: SolvedCard;
}

/** A shadow draws lines of its own beside the card: of all choices those are taken that are as long as a card's sides. */
function bestCard(sides: readonly SideLines[], sheet: SeenSheet): Chosen | BarsDoubt {
  const all = choicesOf(sides).flatMap((lines) => {
    const card = solveCard(lines, sheet);
    return card ? [{ lines, card }] : [];
  });
  const [best, ...others] = all.toSorted((a, b) => a.card.misfit - b.card.misfit);
  if (!best || !(best.card.misfit <= MOST_MISFIT)) return { kind: "no-such-card" };
  const isOther = ({ card: { misfit, stretch } }: Chosen) =>
    misfit < best.card.misfit + AS_GOOD &&
    Math.max(Math.abs(stretch.x - best.card.stretch.x), Math.abs(stretch.y - best.card.stretch.y)) >
      SAME;
  return others.some(isOther) ? { kind: "two-edges" } : best;
}

/** One line for each side, in all ways. */
function choicesOf(sides: readonly SideLines[]): readonly CardLines[] {
  const linesOf = (side: CardSide) => sides.find((one) => one.side === side)?.lines ?? [];
  return linesOf("top").flatMap((top) =>
    linesOf("right").flatMap((right) =>
      linesOf("bottom").flatMap((bottom) =>
        linesOf("left").map((left) => ({ top, right, bottom, left })),
      ),
    ),
  );
}

function doubtOf({ card, lines }: Chosen, sheet: SeenSheet): BarsDoubt | undefined {
  const { stretch, off, camera } = card;
  const { least, most } = LIKELY;
  if (Math.min(stretch.x, stretch.y) < least || Math.max(stretch.x, stretch.y) > most)
    return { kind: "unlikely", length: times(stretch, SHEET_BARS.length) };
  const worst = DEVIATIONS * Math.max(off.x / stretch.x, off.y / stretch.y);
  if (worst <= SURE) return undefined;
  const softest = Math.max(...CARD_SIDES.map((side) => lines[side].width));
  const by = (): UnsureBy => {
    if (softest > SHADED * sheet.softness) return "shadow";
    if (camera.tilt > ASKEW) return "tilt";
    if (CARD_SIDES.some((side) => isFaint(lines[side].contrast))) return "faint";
    return camera.height < NEAR ? "nearness" : "size";
  };
  return { kind: "unsure", off: worst * SHEET_BARS.length, by: by() };
}

function seenSide(
  view: PlaneView,
  side: CardSide,
  { off, slope }: EdgeLine,
): readonly [PhotoPoint, PhotoPoint] {
  const reach = edgeReach(side);
  const end = (along: number) => seenOnSheet(view, besideCard(side, along, off + slope * along));
  return [end(-reach), end(reach)];
}

function marksOf(
  view: PlaneView,
  { dots, lines }: { readonly dots: readonly PhotoPoint[]; readonly lines: CardLines },
): BarMarks {
  const corner = seenOnSheet(view, SHEET_BARS.corner);
  const bar = (name: keyof Stretch) => [corner, seenOnSheet(view, barEnd(name))] as const;
  return {
    dots,
    bars: { x: bar("x"), y: bar("y") },
    sides: CARD_SIDES.map((side) => seenSide(view, side, lines[side])),
  };
}
