/** The store of drawing along: where the keeper is on the way through the steps. */
import type { Hand } from "../../../src/plan/order/draw-order.ts";
import type { AlongPlan } from "../../../src/view/draw-along/plan-data.ts";
import { type AlongStep, alongSteps } from "../../../src/view/draw-along/steps.ts";
import { openStore, type Store } from "../app/store.ts";

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

export interface Stepper extends Pick<Store<StepperState>, "state" | "subscribe"> {
  /** To a step by its index; beyond the last one all is drawn, and before the first is the first. */
  go(place: number): void;
  /** So many steps on, or back where it is less than 0; begins where the whole page is shown. */
  move(by: number): void;
  /** Back to the whole page. */
  stop(): void;
  setHand(hand: Hand): void;
  /** Another plan, shown as a whole at first. */
  setPlan(plan: AlongPlan): void;
}

/** A way through a plan; it stays at rest where the plan has no step. */
export function openStepper(first: AlongPlan, hand: Hand): Stepper {
  let plan = first;
  const { state, set, subscribe } = openStore<StepperState>({
    hand,
    steps: alongSteps(plan, hand),
    place: undefined,
  });
  const update = (part: Partial<StepperState>) => set({ ...state(), ...part });
  const go = (place: number) => {
    const { steps } = state();
    if (steps.length > 0) update({ place: Math.min(Math.max(place, 0), steps.length) });
  };
  return {
    state,
    subscribe,
    go,
    move: (by) => {
      const { place } = state();
      go(place === undefined ? 0 : place + by);
    },
    stop: () => update({ place: undefined }),
    setHand: (next) => {
      const steps = alongSteps(plan, next);
      update({ hand: next, steps, ...(isDrawn(state()) && { place: steps.length }) });
    },
    setPlan: (next) => {
      plan = next;
      update({ steps: alongSteps(plan, state().hand), place: undefined });
    },
  };
}
