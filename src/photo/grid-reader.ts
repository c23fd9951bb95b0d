/** Looks for the dots of a lattice where a view says that they should be. */
import type { Sighting } from "./fit-view.ts";
import { isWithin, medianOf, type PhotoPoint, type SummedGrey, squareMean } from "./grey.ts";
import { placeKey } from "./grow-lattice.ts";
import type { Look, Steps } from "./look.ts";
import { type LatticePoint, type PlaneView, seenAt } from "./plane-view.ts";
import type { Spot, SpotKind } from "./spot.ts";

/** A dot lies no farther from where it should be, in steps and in pixels: what does has nothing to do with the grid. */
const WINDOW = 0.12;
const LEAST_WINDOW_PX = 1.5;
/** A dot is at least so strong, as a part of what its neighbours are. */
const LEAST_STRENGTH = 0.4;

/** So much of a line must be seen. */
const LEAST_INSIDE = 0.75;
/** Two brightnesses of one paper differ by less than the rest of this. */
const ALIKE = 0.92;

export interface Looking {
  readonly grey: SummedGrey;
  readonly look: Look;
  /** What counts as a dot: on squared paper a crossing does. */
  readonly kind: SpotKind;
  /** How far from a dot its surroundings are looked at, in pixels. */
  readonly around: number;
  /** What a lattice has at its places: where it lies as near as a view says, it need not be looked for again. */
  readonly grown?: ReadonlyMap<number, Spot>;
}

/** What is known of the dots so far, by their places. */
export type Answers = ReadonlyMap<number, Sighting & { readonly strength: number }>;

/** What is seen at some places of the lattice, all of one line. */
export interface LineAnswers {
  readonly found: readonly (Sighting & { readonly strength: number })[];
  /** The part of the places inside the photo that have a dot. */
  readonly share: number;
  /** The part of them that something else lies on, such as a line of ink. */
  readonly covered: number;
  /** Does the photo show enough of the line to tell whether it has dots? */
  readonly isInPhoto: boolean;
}

/** How the places of a line are looked at: `inward` leads to the line before, which is known. */
export interface LinePlaces {
  readonly places: readonly LatticePoint[];
  readonly inward: LatticePoint;
}

export function readLine(
  looking: Looking,
  view: PlaneView,
  { places, inward }: LinePlaces,
  answers: Answers,
): LineAnswers {
  const before = places.flatMap(
    ({ across, down }) =>
      answers.get(placeKey(across + inward.across, down + inward.down))?.strength ?? [],
  );
  const usual = medianOf(before);
  const known = knownOffsets(view, inward, answers);
  const spots = places.map((place) => spotNear(looking, view, place, known(place)));
  const found = places.flatMap((place, index) => {
    const spot = spots[index];
    if (!spot || spot.kind !== looking.kind) return [];
    if (spot.strength < LEAST_STRENGTH * usual) return [];
    return [{ ...place, x: spot.x, y: spot.y, strength: spot.strength }];
  });
  const covered = places.filter((place, index) => {
    const spot = spots[index];
    const isLine = spot?.kind === "line" && spot.strength >= LEAST_STRENGTH * usual;
    return isLine && isAlikeAround(looking.grey, view, place, inward);
  });
  const inside = places.filter((place) =>
    isWithin(looking.grey, seenAt(view, place), looking.around),
  );
  return {
    found,
    share: found.length / Math.max(1, inside.length),
    covered: covered.length / Math.max(1, inside.length),
    isInPhoto: inside.length >= LEAST_INSIDE * places.length,
  };
}

/** Is it as bright before a line as after it? The paper's edge looks like a line too, but the desk is not the paper. */
function isAlikeAround(
  grey: SummedGrey,
  view: PlaneView,
  { across, down }: LatticePoint,
  inward: LatticePoint,
): boolean {
  const means = [0.5, -0.5].map((half) => {
    const { x, y } = seenAt(view, {
      across: across + half * inward.across,
      down: down + half * inward.down,
    });
    const at = { x: Math.round(x), y: Math.round(y) };
    return isWithin(grey, at, 2) ? squareMean(grey, at.x, at.y, 2) : 0;
  });
  return Math.min(...means) > ALIKE * Math.max(...means);
}

/**
 * How far what is known lies from where the view says: by curled paper neighbours lie off alike. Of the place itself, else
 * of those beside it in the line before, else in the one before that: where one dot is hidden the others still lead on.
 */
function knownOffsets(
  view: PlaneView,
  inward: LatticePoint,
  answers: Answers,
): (place: LatticePoint) => PhotoPoint {
  const aside = { across: Math.sign(inward.down), down: Math.sign(inward.across) };
  return ({ across, down }) => {
    const own = answers.get(placeKey(across, down));
    if (own) return offsetOf(view, own);
    for (let far = 1; far <= 2; far++) {
      let [x, y, count] = [0, 0, 0];
      for (let side = -1; side <= 1; side++) {
        const found = answers.get(
          placeKey(
            across + far * inward.across + side * aside.across,
            down + far * inward.down + side * aside.down,
          ),
        );
        if (!found) continue;
        const off = offsetOf(view, found);
        x += off.x;
        y += off.y;
        count++;
      }
      if (count > 0) return { x: x / count, y: y / count };
    }
    return { x: 0, y: 0 };
  };
}

function offsetOf(view: PlaneView, found: Sighting): PhotoPoint {
  const seen = seenAt(view, found);
  return { x: found.x - seen.x, y: found.y - seen.y };
}

/** What is seen where a dot should be, by so much off what the view says. */
function spotNear(
  { look, grown }: Looking,
  view: PlaneView,
  place: LatticePoint,
  offset: PhotoPoint,
): Spot | undefined {
  const seen = seenAt(view, place);
  const at = { x: seen.x + offset.x, y: seen.y + offset.y };
  const steps = stepsAt(view, place);
  const most = Math.max(LEAST_WINDOW_PX, WINDOW * shorterOf(steps));
  const near = (spot: Spot | undefined) =>
    spot && Math.hypot(spot.x - at.x, spot.y - at.y) <= most ? spot : undefined;
  return near(grown?.get(placeKey(place.across, place.down))) ?? near(look(at, most, steps));
}

/** The shorter of the two steps at a place, in pixels. */
export function stepAt(view: PlaneView, place: LatticePoint): number {
  return shorterOf(stepsAt(view, place));
}

/** And the longer one. */
export function longerAt(view: PlaneView, place: LatticePoint): number {
  const { right, below } = stepsAt(view, place);
  return Math.max(Math.hypot(right.x, right.y), Math.hypot(below.x, below.y));
}

function shorterOf({ right, below }: Steps): number {
  return Math.min(Math.hypot(right.x, right.y), Math.hypot(below.x, below.y));
}

function stepsAt(view: PlaneView, { across, down }: LatticePoint): Steps {
  const here = seenAt(view, { across, down });
  const to = (there: PhotoPoint) => ({ x: there.x - here.x, y: there.y - here.y });
  return {
    right: to(seenAt(view, { across: across + 1, down })),
    below: to(seenAt(view, { across, down: down + 1 })),
  };
}
