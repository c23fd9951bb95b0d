/** Finds where the sides of a bank card lie on the test sheet: long straight edges with nothing but paper outside of them. */
import { besideCard, CARD_SIDES, type CardSide, edgeReach, pixelsPerMm } from "./card-sides.ts";
import { type Edge, type EdgeLine, linesOf } from "./edge-lines.ts";
import { meanEdge, profileAlong, STEP, slopesOf, softness } from "./edge-profile.ts";
import { type Grey, medianOf, numberAt } from "./grey.ts";
import type { PlaneView } from "./plane-view.ts";

/** A line that may be the card's side. */
export interface SideLine extends EdgeLine {
  /** How soft it is, as a standard deviation in millimetres. */
  readonly width: number;
  /** How far from it the next line lies that may be the side; nought where none is near. */
  readonly next: number;
  /** How much darker or brighter than the paper the card is beside it, as a part of the paper's brightness. */
  readonly contrast: number;
}

/** What is seen of one side, the outermost line first; none where there is nothing like a side. */
export interface SideLines {
  readonly side: CardSide;
  readonly lines: readonly SideLine[];
}

/** Profiles lie so far apart, and go on so far to both sides of the place, in millimetres. */
const EACH = 0.5;
const REACH = 6.2;
/** What a camera softens itself, in pixels (an estimate). */
const LENS_PX = 0.8;
/** An edge is so strong, as a part of the paper's brightness. */
const LEAST_EDGE = 0.045;
/** Behind the outermost line, others may be the card's so far in: a shadow lies around a card. */
const SHADOW = 1.8;
const MOST_LINES = 3;
/** So far behind its edge a card is looked at. */
const INSIDE = 0.8;
/** Lines nearer than this push each other away: the side may lie between them. */
const CROWDED = 0.9;

/** All that may be a side of the card; nothing where its place lies partly outside of the photo. */
export function cardEdges(grey: Grey, view: PlaneView): readonly SideLines[] | undefined {
  const sides = CARD_SIDES.flatMap((side) => {
    const profiles = profilesOf(grey, view, side);
    return profiles ? [{ side, lines: outerLines(view, profiles) }] : [];
  });
  return sides.length < CARD_SIDES.length ? undefined : sides;
}

interface Profile {
  readonly along: number;
  /** From outside inwards. */
  readonly brightness: Float64Array;
  readonly slopes: Float64Array;
}

function profilesOf(grey: Grey, view: PlaneView, side: CardSide): readonly Profile[] | undefined {
  const reach = edgeReach(side);
  const soft = softness(view);
  const count = Math.round((2 * REACH) / STEP) + 1;
  const profiles: Profile[] = [];
  for (let along = -reach; along <= reach; along += EACH) {
    const place = (index: number) => besideCard(side, along, REACH - index * STEP);
    const brightness = profileAlong(grey, view, { count, place });
    if (!brightness) return undefined;
    profiles.push({ along, brightness, slopes: slopesOf(brightness, soft) });
  }
  return profiles;
}

/** The outermost line, and those that lie a shadow's breadth inside of it. */
function outerLines(view: PlaneView, profiles: readonly Profile[]): readonly SideLine[] {
  // A step of one, softened, is at its steepest by so much.
  const soft = Math.hypot(softness(view), LENS_PX / pixelsPerMm(view));
  const least = (LEAST_EDGE * STEP) / (Math.sqrt(2 * Math.PI) * soft);
  const edges = profiles.flatMap((profile) => edgesIn(profile, least));
  const sorted = linesOf(edges, profiles.length).toSorted((a, b) => b.off - a.off);
  const [outer] = sorted;
  if (!outer) return [];
  const near = sorted.filter(({ off }) => outer.off - off < SHADOW).slice(0, MOST_LINES);
  return near.map((line) => ({
    ...line,
    width: widthOf(line, profiles),
    next: nextTo(line, near),
    contrast: contrastAt(line, profiles),
  }));
}

/** Half of all profiles have less. */
function contrastAt({ off, slope }: EdgeLine, profiles: readonly Profile[]): number {
  return medianOf(
    profiles.map(({ along, brightness }) => {
      const paper = paperOf(brightness);
      const inside = Math.round((REACH - off - slope * along + INSIDE) / STEP);
      return Math.abs(1 - numberAt(brightness, inside) / paper);
    }),
  );
}

/** As bright as the paper is at the outer end of a profile. */
function paperOf(brightness: Float64Array): number {
  return medianOf([...brightness.subarray(0, 8)]);
}

function nextTo(line: EdgeLine, lines: readonly EdgeLine[]): number {
  const others = lines.filter((other) => other !== line);
  const nearest = Math.min(...others.map(({ off }) => Math.abs(off - line.off)));
  return nearest < CROWDED ? nearest : 0;
}

/** Where a profile changes most: at the steepest places of it. */
function edgesIn({ along, brightness, slopes }: Profile, part: number): readonly Edge[] {
  const least = part * paperOf(brightness);
  const found: Edge[] = [];
  for (let index = 1; index < slopes.length - 1; index++) {
    const [before = 0, here = 0, after = 0] = [index - 1, index, index + 1].map((one) =>
      Math.abs(numberAt(slopes, one)),
    );
    if (here < least || here < before || here <= after) continue;
    const bend = before - 2 * here + after;
    const beside = bend < 0 ? (before - after) / (2 * bend) : 0;
    found.push({ along, off: REACH - (index + beside) * STEP });
  }
  return found;
}

function widthOf({ off, slope }: EdgeLine, profiles: readonly Profile[]): number {
  const mean = meanEdge();
  for (const { along, slopes } of profiles) mean.add(slopes, (REACH - off - slope * along) / STEP);
  return mean.width() ?? 0;
}
