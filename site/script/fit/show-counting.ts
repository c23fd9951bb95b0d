/** Which way of counting is proposed for the notebook, and why; one press takes it. */

import type { CountProposal } from "../../../src/issue/facts/count-proposal.ts";
import type { PaperDoubt } from "../../../src/issue/facts/paper-doubt.ts";
import { sayCountProposal } from "../../../src/issue/words/say-count-proposal.ts";
import { sayPaperDoubt } from "../../../src/issue/words/say-paper-doubt.ts";
import { COUNT_WORDS } from "../../../src/issue/words/say-plan-note.ts";
import { AXES } from "../../../src/measure/axis.ts";
import { usableSteps } from "../../../src/measure/grid-axis.ts";
import { doubtPaper } from "../../../src/notebook/paper-doubt.ts";
import { proposeCount } from "../../../src/notebook/propose-count.ts";
import { fieldsOf } from "../../../src/view/fields/notebook-fields.ts";
import { readFields } from "../../../src/view/fields/read-notebook-fields.ts";
import type { Device } from "../device/device.ts";
import { makeElement } from "../ui/make-element.ts";
import { partOf } from "../ui/parts.ts";
import type { FitPageState, FitStore } from "./fit-store.ts";

interface Asking {
  readonly store: FitStore;
  readonly device: Device;
}

/** Shows the proposals that differ from how the notebook is counted, and asks about paper that cannot be right. */
export function bindProposal(page: ParentNode, store: FitStore, device: Device): void {
  const place = partOf(page, "proposal");
  let said = "";
  const show = (state: FitPageState) => {
    const doubt = isHeld(state) ? undefined : doubtPaper(state.notebook);
    const proposals = isHeld(state) || doubt ? [] : proposalsFor(state, habitsOf(device));
    const words = [
      doubt ? sayPaperDoubt(doubt) : "",
      ...proposals.map((one) => sayChoice(one, state)),
    ];
    if (words.join("\n") === said) return;
    said = words.join("\n");
    const asking = { store, device };
    place.replaceChildren(
      ...(doubt ? [doubtElement(doubt, store)] : []),
      ...proposals.map((proposal) => proposalElement(proposal, asking, () => show(store.state()))),
    );
  };
  store.subscribe(show);
}

/** Advice goes by what the fields say: while one is not valid, there is none. */
function isHeld({ errors }: FitPageState): boolean {
  return errors.notebook.length > 0;
}

/** Of ways that the keeper stays with nobody asks again. */
function proposalsFor(
  { notebook }: FitPageState,
  habits: readonly string[],
): readonly CountProposal[] {
  return AXES.map((axis) => proposeCount(notebook.axes[axis], axis)).filter(({ axis, count }) => {
    const own = notebook.axes[axis].count;
    return count !== own && !habits.includes(own);
  });
}

function habitsOf(device: Device): readonly string[] {
  return (device.get("count-habits") ?? "").split(" ");
}

function sayChoice(proposal: CountProposal, { notebook }: FitPageState): string {
  const grid = notebook.axes[proposal.axis];
  const proposed = { ...grid, count: proposal.count };
  return sayCountProposal(proposal, {
    count: grid.count,
    steps: usableSteps(grid),
    proposedSteps: usableSteps(proposed),
  });
}

function proposalElement(
  proposal: CountProposal,
  { store, device }: Asking,
  showAgain: () => void,
): HTMLElement {
  const { axis, count } = proposal;
  const own = store.state().notebook.axes[axis].count;
  const take = askButton(`Count ${axis} ${COUNT_WORDS[count]}`, () => {
    const { notebook } = store.state().fit;
    const grid = { ...notebook.axes[axis], count };
    store.update({ notebook: { ...notebook, axes: { ...notebook.axes, [axis]: grid } } });
    // The button is gone with its proposal: the field that it changed is where one goes on.
    document.getElementById(axis === "across" ? "count" : "count-down")?.focus();
  });
  const stay = askButton(`Keep my way ${axis}`, () => {
    device.set("count-habits", [...habitsOf(device), own].join(" ").trim());
    showAgain();
    document.getElementById(axis === "across" ? "count" : "count-down")?.focus();
  });
  const words = sayChoice(proposal, store.state());
  return makeElement("div", {}, makeElement("p", {}, words), stay, " ", take);
}

function doubtElement(doubt: PaperDoubt, store: FitStore): HTMLElement {
  const [paper] = doubt.papers;
  const take = paper ? [askButton(`Take ${paper.name}`, () => takePaper(paper.name, store))] : [];
  return makeElement("div", {}, makeElement("p", {}, sayPaperDoubt(doubt)), ...take);
}

function takePaper(paper: string, store: FitStore): void {
  const { notebook } = store.state().fit;
  const reading = readFields({ ...fieldsOf(notebook), paper });
  if (reading.ok) store.update({ notebook: { ...reading.value, body: notebook.body } });
  document.getElementById("paper")?.focus();
}

function askButton(words: string, act: () => void): HTMLElement {
  const button = makeElement("button", { type: "button", "data-needs": "notebook" }, words);
  button.addEventListener("click", act);
  return button;
}
