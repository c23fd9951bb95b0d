/** Random patterns in which every exact share is whole, so that a browser and the engine must agree to the step. */
import type { TrackSize } from "../../src/divide/question.ts";
import type { Area, Split } from "../../src/recipe/recipe.ts";
import { type Random, randomFrom } from "./random.ts";
import { area, columns, rows, track } from "./recipe-of.ts";
import { fixedTrack, shareTrack } from "./track.ts";

export interface WholePattern {
  readonly across: number;
  readonly down: number;
  readonly page: Area;
}

/** So many pages, each split at least once; the same seed gives the same pages. */
export function* wholePatterns(seed: number, cases: number): Generator<WholePattern> {
  const random = randomFrom(seed);
  for (let made = 0; made < cases; ) {
    const [across, down] = [random.whole(8, 60), random.whole(8, 60)];
    const page = wholeArea(random, { across, down }, 3);
    if (!page.split) continue;
    made++;
    yield { across, down, page };
  }
}

interface Room {
  readonly across: number;
  readonly down: number;
}

/** An area with a margin at times, split where a split comes out whole within a few tries. */
function wholeArea(random: Random, room: Room, depth: number): Area {
  const side = () => (random.oneIn(6) ? random.whole(1, 2) : 0);
  const steps = { top: side(), right: side(), bottom: side(), left: side() };
  const inner = {
    across: room.across - steps.left - steps.right,
    down: room.down - steps.top - steps.bottom,
  };
  if (inner.across < 1 || inner.down < 1 || depth === 0) return area();
  for (let tries = 0; tries < 20; tries++) {
    const split = wholeSplit(random, inner, depth);
    if (split) return area({ margin: { steps }, split });
  }
  return area({ margin: { steps } });
}

interface Found {
  readonly sizes: readonly TrackSize[];
  /** What each track gets. */
  readonly steps: readonly number[];
  readonly leftover: Split["leftover"];
}

function wholeSplit(random: Random, room: Room, depth: number): Split | undefined {
  const axis = random.pick(["across", "down"]);
  const gap = random.whole(0, 2);
  const count = random.whole(1, 6);
  const free = room[axis] - gap * (count - 1);
  const found = random.pick([sharedOut, sharedOut, withMinimum, allFixed])(random, free, count);
  if (!found) return undefined;
  const tracks = found.sizes.map((size, i) => {
    const inner =
      axis === "across" ? { across: found.steps[i] ?? 0 } : { down: found.steps[i] ?? 0 };
    return track(size, wholeArea(random, { ...room, ...inner }, depth - 1));
  });
  const along = axis === "across" ? columns : rows;
  return along(tracks, { gap: { min: gap, max: gap }, leftover: found.leftover });
}

const AT_END = { kind: "end" } as const;

/** Shares that come out whole, at times beside fixed tracks and with minimums that do not bind. */
function sharedOut(random: Random, free: number, count: number): Found | undefined {
  const fixed = Array.from({ length: count }, () => (random.oneIn(4) ? random.whole(1, 5) : 0));
  const shares = fixed.map((steps) => (steps > 0 ? 0 : random.pick([0.5, 1, 1, 1.5, 2, 3])));
  const shared = free - sum(fixed);
  const unit = shared / sum(shares);
  const steps = fixed.map((each, i) => each + unit * (shares[i] ?? 0));
  // CSS gives less than all where the shares add up to less than 1
  if (sum(shares) < 1 || steps.some((each) => each < 1 || !Number.isInteger(each)))
    return undefined;
  const sizes = shares.map((share, i): TrackSize => {
    if (share === 0) return fixedTrack(fixed[i] ?? 0);
    return shareTrack(share, { min: random.oneIn(4) ? random.whole(1, steps[i] ?? 1) : 1 });
  });
  return { sizes, steps, leftover: AT_END };
}

/** One track held at a minimum above its share; the others, all alike, divide the rest. */
function withMinimum(random: Random, free: number, count: number): Found | undefined {
  const share = random.whole(1, 3);
  const min = random.whole(2, Math.max(2, free - count));
  const each = (free - min) / (count - 1);
  const isAbove = min * (share + count - 1) > free * share;
  if (count < 2 || !Number.isInteger(each) || each < 1 || !isAbove) return undefined;
  const place = random.whole(0, count - 1);
  const pick = <T>(held: T, other: T) =>
    Array.from({ length: count }, (_, i) => (i === place ? held : other));
  return {
    sizes: pick(shareTrack(share, { min }), shareTrack(1)),
    steps: pick(min, each),
    leftover: AT_END,
  };
}

/** Fixed tracks, and the leftover placed in one of the ways that CSS has too. */
function allFixed(random: Random, free: number, count: number): Found | undefined {
  const steps = Array.from({ length: count }, () => random.whole(1, 8));
  const leftover = free - sum(steps);
  const kind = random.pick(["end", "start", "centre", "gaps"]);
  const halves = kind !== "centre" || leftover % 2 === 0;
  const gaps = kind !== "gaps" || (count > 1 && leftover % (count - 1) === 0);
  if (leftover < 0 || !halves || !gaps) return undefined;
  return { sizes: steps.map(fixedTrack), steps, leftover: { kind } };
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((so, each) => so + each, 0);
}
