/** Which way of counting is proposed for the notebook, and why; one press takes it. */

import type { CountProposal } from "../../../src/issue/facts/count-proposal.ts";
import { sayCountProposal } from "../../../src/issue/words/say-count-proposal.ts";
import { AXES } from "../../../src/measure/axis.ts";
import { proposeCount } from "../../../src/notebook/propose-count.ts";
import { makeElement } from "../page/make-element.ts";
import { partOf } from "../page/parts.ts";
import type { Bench, Shown } from "./bench.ts";

/** Shows the proposals that differ from how the notebook is counted. */
export function bindProposal(page: ParentNode, bench: Bench): void {
  const place = partOf(page, "proposal");
  let said = "";
  bench.tell((shown) => {
    const proposals = isHeld(shown) ? [] : proposalsFor(shown);
    const words = proposals.map(sayCountProposal).join("\n");
    if (words === said) return;
    said = words;
    place.replaceChildren(...proposals.map((proposal) => proposalElement(proposal, bench)));
  });
}

/** Advice goes by what the fields say: while one will not do, there is none. */
function isHeld({ faults }: Shown): boolean {
  return faults.notebook.length > 0;
}

function proposalsFor({ notebook }: Shown): readonly CountProposal[] {
  return AXES.map((axis) => proposeCount(notebook.axes[axis], axis)).filter(
    ({ axis, count }) => count !== notebook.axes[axis].count,
  );
}

function proposalElement(proposal: CountProposal, bench: Bench): HTMLElement {
  const { axis, count } = proposal;
  const take = makeElement(
    "button",
    { type: "button", "data-needs": "notebook" },
    `Count so ${axis}`,
  );
  take.addEventListener("click", () => {
    const { notebook } = bench.shown().fit;
    const grid = { ...notebook.axes[axis], count };
    bench.change({ notebook: { ...notebook, axes: { ...notebook.axes, [axis]: grid } } });
    // The button is gone with its proposal: the field that it changed is where one goes on.
    document.getElementById(axis === "across" ? "count" : "count-down")?.focus();
  });
  return makeElement("div", {}, makeElement("p", {}, sayCountProposal(proposal)), take);
}
