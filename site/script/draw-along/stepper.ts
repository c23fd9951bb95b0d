/** Where the keeper is on the way through the steps. */
import type { Hand } from "../../../src/plan/order/draw-order.ts";
import type { AlongPlan } from "../../../src/view/draw-along/plan-data.ts";
import { type AlongStep, alongSteps } from "../../../src/view/draw-along/steps.ts";

export interface StepperState {
  readonly hand: Hand;
  readonly steps: readonly AlongStep[];
  /** The index of the step to do now, as many as there are when all are done; none while the whole page is shown. */
  readonly place: number | undefined;
}

/** The step to do now; none at rest and when all is drawn. */
export function stepOf({ steps, place }: StepperState): AlongStep | undefined {
  return place === undefined ? undefined : steps[place];
}

/** Is every step done? */
export function isDrawn({ steps, place }: StepperState): boolean {
  return place === steps.length;
}

export interface Stepper {
  state(): StepperState;
  /** To a step by its index; beyond the last one all is drawn, and before the first is the first. */
  go(place: number): void;
  /** So many steps on, or back where it is less than 0; begins where the whole page is shown. */
  move(by: number): void;
  /** Back to the whole page. */
  stop(): void;
  turn(hand: Hand): void;
  /** Another plan, shown as a whole at first. */
  take(plan: AlongPlan): void;
  /** Is told of every change, and once at the beginning. */
  watch(see: (now: StepperState, before: StepperState) => void): void;
}

/** A course through a plan; it stays at rest where the plan has no step. */
export function openStepper(first: AlongPlan, hand: Hand): Stepper {
  let plan = first;
  let now: StepperState = { hand, steps: alongSteps(plan, hand), place: undefined };
  const watchers: ((now: StepperState, before: StepperState) => void)[] = [];
  const change = (next: Partial<StepperState>) => {
    const before = now;
    now = { ...now, ...next };
    for (const see of watchers) see(now, before);
  };
  const go = (place: number) => {
    if (now.steps.length === 0) return;
    change({ place: Math.min(Math.max(place, 0), now.steps.length) });
  };
  return {
    state: () => now,
    go,
    move: (by) => go(now.place === undefined ? 0 : now.place + by),
    stop: () => change({ place: undefined }),
    turn: (next) => {
      const steps = alongSteps(plan, next);
      change({ hand: next, steps, ...(isDrawn(now) && { place: steps.length }) });
    },
    take: (next) => {
      plan = next;
      change({ steps: alongSteps(plan, now.hand), place: undefined });
    },
    watch: (see) => {
      watchers.push(see);
      see(now, now);
    },
  };
}
