/** The front page's store: the keeper's notebook, the division that is asked of it, and what it comes to. */
import type { FieldIssue } from "../../../src/issue/facts/field-issue.ts";
import type { Notebook } from "../../../src/notebook/notebook.ts";
import type { Asked } from "../../../src/view/address/division-address.ts";
import { type WorkedDivision, workOutDivision } from "../../../src/view/division/division.ts";
import { nameNotebook } from "../../../src/view/fields/name-notebook.ts";
import { openStore, type Store } from "../app/store.ts";

export interface HomeState {
  readonly asked: Asked;
  /** With its name. */
  readonly notebook: Notebook;
  readonly worked: WorkedDivision;
  /** What is wrong in the fields now: what is shown is of what was written in them before. */
  readonly issues: readonly FieldIssue[];
}

export interface HomeStore extends Pick<Store<HomeState>, "state" | "subscribe"> {
  /** Changes some of what is asked. */
  update(part: Partial<Asked>): void;
  setErrors(issues: readonly FieldIssue[]): void;
}

/** A store that has something to show from the start. */
export function openHomeStore(start: Asked): HomeStore {
  const { state, set, subscribe } = openStore(stateOf(start));
  return {
    state,
    subscribe,
    update: (part) => set(stateOf({ ...state().asked, ...part })),
    setErrors: (issues) => set({ ...state(), issues }),
  };
}

function stateOf(asked: Asked): HomeState {
  const notebook = nameNotebook(asked.notebook, []);
  return { asked, notebook, worked: workOutDivision(asked.division, notebook), issues: [] };
}
