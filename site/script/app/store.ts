/** The store that every page has: one state, replaced as a whole, and told to whoever shows it. */

export interface Store<State> {
  state(): State;
  /** Puts another state in its place; everybody is told before this returns. */
  set(next: State): void;
  /** Tells the state as it is now, and then every change with the state before it. */
  subscribe(show: (state: State, before: State) => void): void;
}

/** A store that has something to show from the start. */
export function openStore<State>(start: State): Store<State> {
  const listeners: ((state: State, before: State) => void)[] = [];
  let state = start;
  return {
    state: () => state,
    set: (next) => {
      const before = state;
      state = next;
      // Whoever changes it while it is told makes the rest be told the newest one, never an older one last.
      for (const show of listeners) show(state, before);
    },
    subscribe: (show) => {
      listeners.push(show);
      show(state, state);
    },
  };
}
