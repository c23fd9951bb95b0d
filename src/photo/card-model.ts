/** What is known of a card on the test sheet, and what its seen sides tell: all as what is off, in standard deviations. */
import { BANK_CARD } from "../measure/bank-card.ts";
import { type CameraOver, cameraOver, type Focal, type Stretch } from "./camera-over.ts";
import type { SideLine } from "./card-edges.ts";
import { besideCard, CARD_SIDES, type CardSide, edgeReach } from "./card-sides.ts";
import type { EdgeLine } from "./edge-lines.ts";
import { numberAt } from "./grey.ts";
import type { Residuals } from "./least-misfit.ts";
import type { PlaneView } from "./plane-view.ts";
import { CARD_PLACE, type SheetPoint } from "./test-sheet.ts";

export type CardLines = Readonly<Record<CardSide, SideLine>>;

/** How the sheet is seen, with as many pixels for a millimetre. */
export interface SeenSheet {
  readonly view: PlaneView;
  readonly perMm: number;
  /** How soft an edge of print is, as a standard deviation in millimetres. */
  readonly softness: number;
  /** What the camera says of itself. */
  readonly focal?: Focal;
}

/**
 * Standard deviations in millimetres, and in pixels where they are told in pixels. A card's own tolerance is taken as
 * two and a half of them. `side` is how far off a whole side is seen, `end` one end of it against the other.
 */
const OFF = {
  long: BANK_CARD.off.long / 2.5,
  short: BANK_CARD.off.short / 2.5,
  side: { mm: 0.03, px: 0.15 },
  end: { mm: 0.012, px: 0.08 },
  thick: BANK_CARD.off.thick / 2,
} as const;

/** A side is softer than it should be from here on, against print and against the sharpest side. */
const AS_SOFT = { print: 1.05, side: 1.015 } as const;
/** What is softer may be off by that part of it, and a side beside another line by that part of what is between them. */
const UNSURE = 0.7;
const BETWEEN = 0.4;
/** A faint side may be a shadow's as well as the card's, in millimetres. */
const FAINT_OFF = 0.07;
/** By so much of that it seems too far outside: a shadow lies there. */
const FARTHER = 0.5;

/** Of a side whose face is seen from the camera, its upper or its lower edge is the outer one, or something between. */
const FACE = { height: BANK_CARD.thick / 2, off: 0.25 } as const;

/** Has a side so little contrast that a shadow may have as much? Hardly any is darker than that beside a card. */
export function isFaint(contrast: number): boolean {
  return contrast < 0.5;
}

/** What is sought. What is known of beforehand is in its standard deviations. */
interface CardNumbers {
  readonly stretch: Stretch;
  /** How the card lies on the paper: its turn in radians, and its middle in millimetres. */
  readonly turn: number;
  readonly middle: SheetPoint;
  /** By how much its edges are longer than they should be. */
  readonly long: number;
  readonly short: number;
  readonly focal: number;
  /** How far off each side is seen, and how high above the paper. */
  readonly sides: readonly number[];
  readonly heights: readonly number[];
}

/** A list of numbers by their names. */
export function cardNumbers(list: readonly number[]): CardNumbers {
  const [stretchX = 1, stretchY = 1, turn = 0, x = 0, y = 0, long = 0, short = 0, focal = 0] = list;
  const rest = list.slice(LISTED);
  return {
    ...{ stretch: { x: stretchX, y: stretchY }, turn, middle: { x, y }, long, short, focal },
    ...{ sides: rest.slice(0, CARD_SIDES.length), heights: rest.slice(CARD_SIDES.length) },
  };
}

const LISTED = 8;

/** The card on its place of a sheet that is not stretched. */
export const CARD_START: readonly number[] = [
  ...[1, 1, (CARD_PLACE.turn * Math.PI) / 180, CARD_PLACE.middle.x, CARD_PLACE.middle.y],
  ...[0, 0, 0, ...CARD_SIDES.flatMap(() => [0, 0])],
];

/** What is taken as known while the rest is sought. */
interface Known {
  readonly stretch: Stretch;
  readonly focal: Focal;
}

/** How far each end of each side lies from the card's own, and how far all else is from what is known of it. */
export function cardResiduals(lines: CardLines, sheet: SeenSheet, known: Known): Residuals {
  const sharpest = Math.min(...CARD_SIDES.map((name) => lines[name].width));
  const soft = Math.min(AS_SOFT.print * sheet.softness, AS_SOFT.side * sharpest);
  const sides = CARD_SIDES.map((name) => ({
    name,
    ends: endsOf(name, lines[name]),
    ...errorsOf(lines[name], { soft, perMm: sheet.perMm }),
  }));
  return (list) => {
    const numbers = cardNumbers(list);
    const { stretch, long, short, focal } = numbers;
    const camera = cameraOver(
      sheet.view,
      stretch,
      Math.exp(known.focal.log + focal * known.focal.off),
    );
    if (!camera) return undefined;
    const ends = sides.flatMap((side, index) => {
      const height = heightOf(side.name, camera, known.stretch);
      const raised = height.mm + numberAt(numbers.heights, index) * height.off;
      const inward = side.farther - numberAt(numbers.sides, index) * side.side;
      const half = halfOf(side.name, long * OFF.long, short * OFF.short);
      return side.ends.map((point) => {
        const lies = onCard(lowered(point, { stretch, camera, raised }), numbers);
        return (outward(side.name, lies) - inward - half) / side.end;
      });
    });
    return [...ends, long, short, focal, ...numbers.sides, ...numbers.heights];
  };
}

/** In millimetres: how far off a whole side may be seen, one end of it alone, and how much farther out it is than it seems. */
function errorsOf(
  { width, error, next, contrast }: SideLine,
  { soft, perMm }: { readonly soft: number; readonly perMm: number },
): Readonly<Record<"side" | "end" | "farther", number>> {
  // Softer than it should be: a shadow lies beside it.
  const extra = Math.sqrt(Math.max(0, width ** 2 - soft ** 2));
  return {
    side: Math.hypot(
      OFF.side.mm,
      OFF.side.px / perMm,
      UNSURE * extra,
      BETWEEN * next,
      isFaint(contrast) ? FAINT_OFF : 0,
    ),
    // The ends of a fitted line are about twice as unsure as its middle.
    end: Math.hypot(OFF.end.mm, OFF.end.px / perMm, 2 * error),
    farther: FARTHER * extra,
  };
}

/** Where both ends of what is seen of a side seem to lie, in millimetres of the drawing. */
function endsOf(side: CardSide, { off, slope }: EdgeLine): readonly SheetPoint[] {
  const reach = edgeReach(side);
  return [-reach, reach].map((along) => besideCard(side, along, off + slope * along));
}

/** Straight below what is seen at a point of the sheet, but lies above it; in millimetres of paper. */
function lowered(
  { x, y }: SheetPoint,
  {
    stretch,
    camera: { nadir, height },
    raised,
  }: { readonly stretch: Stretch; readonly camera: CameraOver; readonly raised: number },
): SheetPoint {
  const [right, down] = [x * stretch.x, y * stretch.y];
  const part = raised / height;
  return { x: right + (nadir.x - right) * part, y: down + (nadir.y - down) * part };
}

/** From millimetres of paper to those of the card, from its middle. */
function onCard({ x, y }: SheetPoint, { turn, middle }: CardNumbers): SheetPoint {
  const [right, down] = [x - middle.x, y - middle.y];
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  return { x: cos * right + sin * down, y: -sin * right + cos * down };
}

function outward(side: CardSide, { x, y }: SheetPoint): number {
  return side === "top" ? -y : side === "bottom" ? y : side === "left" ? -x : x;
}

function halfOf(side: CardSide, longer: number, higher: number): number {
  const isLong = side === "top" || side === "bottom";
  return (isLong ? BANK_CARD.short + higher : BANK_CARD.long + longer) / 2;
}

/** How high above the paper that lies which is seen as a side: its upper edge, unless the camera sees its face. */
function heightOf(
  side: CardSide,
  { nadir }: CameraOver,
  stretch: Stretch,
): { readonly mm: number; readonly off: number } {
  const edge = besideCard(side, 0, 0);
  const farther = besideCard(side, 0, 1);
  const [right, down] = [nadir.x / stretch.x - edge.x, nadir.y / stretch.y - edge.y];
  const isFaceSeen = right * (farther.x - edge.x) + down * (farther.y - edge.y) > 0;
  return isFaceSeen ? { mm: FACE.height, off: FACE.off } : { mm: BANK_CARD.thick, off: OFF.thick };
}
