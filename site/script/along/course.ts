/** Where the keeper is on the way through the steps. */
import type { AlongPlan } from "../../../src/book/pattern/along-data.ts";
import type { Hand } from "../../../src/plan/draw-order.ts";
import { type AlongStep, alongSteps } from "./along-steps.ts";

export interface CourseState {
  readonly hand: Hand;
  readonly steps: readonly AlongStep[];
  /** The index of the step to do now; none while the whole page is shown. */
  readonly place: number | undefined;
}

export interface Course {
  state(): CourseState;
  /** To a step by its index; to the first or the last one beyond either end. */
  go(place: number): void;
  /** So many steps on, or back where it is less than 0; begins where the whole page is shown. */
  move(by: number): void;
  /** Back to the whole page. */
  stop(): void;
  turn(hand: Hand): void;
  /** Is told of every change, and once at the beginning. */
  watch(see: (now: CourseState, before: CourseState) => void): void;
}

/** A course through a plan that has at least one step. */
export function openCourse(plan: AlongPlan, hand: Hand): Course {
  let now: CourseState = { hand, steps: alongSteps(plan, hand), place: undefined };
  const watchers: ((now: CourseState, before: CourseState) => void)[] = [];
  const change = (next: Partial<CourseState>) => {
    const before = now;
    now = { ...now, ...next };
    for (const see of watchers) see(now, before);
  };
  const go = (place: number) => {
    change({ place: Math.min(Math.max(place, 0), now.steps.length - 1) });
  };
  return {
    state: () => now,
    go,
    move: (by) => go(now.place === undefined ? 0 : now.place + by),
    stop: () => change({ place: undefined }),
    turn: (next) => change({ hand: next, steps: alongSteps(plan, next) }),
    watch: (see) => {
      watchers.push(see);
      see(now, now);
    },
  };
}
