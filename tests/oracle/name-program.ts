/**
 * What a name's size must satisfy, as lines in that one unknown: for patterns whose sizes depend on the name in a line.
 * That is so where in every split that holds another split all tracks are fixed or named, but for one share
 * track without a max, which takes what is left at the narrowest gap.
 */
import { type Axis, otherAxis } from "../../src/measure/axis.ts";
import type { Area, Split, TrackSizing } from "../../src/recipe/recipe.ts";
import { added, type Linear, scaled, steady, taken, UNKNOWN } from "./linear.ts";

export interface Sizing {
  /** The name whose size is the unknown. */
  readonly name: string;
  /** The names fixed before; later ones are plain share tracks. */
  readonly before: ReadonlyMap<string, number>;
}

/** Lines that must not fall below 0. */
export interface Needs {
  /** That everything fits, every size within its limits. */
  readonly fits: readonly Linear[];
  /** That the name is nowhere above its share. */
  readonly within: readonly Linear[];
}

type Room = Readonly<Record<Axis, Linear>>;

/** The needs of an area that has so much room; margins are not looked at. */
export function needsOf(area: Area, room: Room, sizing: Sizing): Needs {
  const atLeastOne = [added(room.across, steady(-1)), added(room.down, steady(-1))];
  if (!area.split) return { fits: atLeastOne, within: [] };
  const { split } = area;
  const { axis, tracks } = split;
  const free = added(room[axis], steady(-(tracks.length - 1) * split.gap.min));
  const sizes = tracks.map(({ size }) => sizeOf(size, sizing));
  const least = tracks.map(
    ({ size }, i) => sizes[i] ?? steady(size.kind === "steps" ? 0 : size.min),
  );
  const own: Needs = {
    fits: [...atLeastOne, taken(free, added(...least)), ...limitsOf(split, sizing)],
    within: sharesOf(split, free, sizing),
  };
  return tracks.reduce((needs, track, i) => {
    if (!track.area.split) return needs;
    const size = sizes[i] ?? restOf(split, free, sizes);
    const inner = axisRoom(axis, size, room[otherAxis(axis)]);
    return joined(needs, needsOf(track.area, inner, sizing));
  }, own);
}

function axisRoom(axis: Axis, along: Linear, aside: Linear): Room {
  return axis === "across" ? { across: along, down: aside } : { across: aside, down: along };
}

function joined(a: Needs, b: Needs): Needs {
  return { fits: [...a.fits, ...b.fits], within: [...a.within, ...b.within] };
}

/** A size that is known or the unknown itself; undefined for a share track. */
function sizeOf(size: TrackSizing, { name, before }: Sizing): Linear | undefined {
  if (size.kind === "steps") return steady(size.steps);
  if (size.kind === "share") return undefined;
  if (size.name === name) return UNKNOWN;
  const steps = before.get(size.name);
  return steps === undefined ? undefined : steady(steps);
}

function limitsOf({ tracks }: Split, { name }: Sizing): readonly Linear[] {
  return tracks.flatMap(({ size }) => {
    if (size.kind !== "same" || size.name !== name) return [];
    const most = size.max === Number.POSITIVE_INFINITY ? [] : [taken(steady(size.max), UNKNOWN)];
    return [added(UNKNOWN, steady(-size.min)), ...most];
  });
}

/** w · (free − all fixed tracks) − W · unknown, for each track of the name. */
function sharesOf({ tracks }: Split, free: Linear, { name }: Sizing): readonly Linear[] {
  const fixed = tracks.map(({ size }) => (size.kind === "steps" ? size.steps : 0));
  const weights = tracks.map(({ size }) => (size.kind === "steps" ? 0 : size.weight));
  const shared = taken(free, added(...fixed.map(steady)));
  const all = weights.reduce((so, weight) => so + weight, 0);
  return tracks.flatMap(({ size }) =>
    size.kind === "same" && size.name === name
      ? [taken(scaled(shared, size.weight), scaled(UNKNOWN, all))]
      : [],
  );
}

/** What the one open share track of a split gets. */
function restOf({ tracks }: Split, free: Linear, sizes: readonly (Linear | undefined)[]): Linear {
  const open = tracks.filter((_, i) => sizes[i] === undefined);
  const [only] = open;
  if (
    open.length !== 1 ||
    only?.size.kind !== "share" ||
    only.size.max !== Number.POSITIVE_INFINITY
  )
    throw new RangeError("the pattern's sizes do not depend on the name in a line");
  return taken(free, added(...sizes.flatMap((size) => size ?? [])));
}
