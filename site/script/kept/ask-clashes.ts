/** Asks what is to become of things whose names others have: both, one of them, or the one that was here. */
import { kindOf } from "../../../src/view/kept/kept-file.ts";
import type { Clash } from "../../../src/view/kept/meet-kept.ts";
import { makeElement } from "../ui/make-element.ts";

export type Answer = "both" | "replace" | "leave";

const KINDS = { patterns: "layout", notebooks: "notebook", strips: "strip", setups: "set-up" };

/** Fills the form and goes to it; told once, when all is answered. */
export function askClashes(
  form: HTMLElement,
  clashes: readonly Clash[],
  told: (answers: ReadonlyMap<Clash, Answer>) => void,
): void {
  const answers = new Map<Clash, Answer>(clashes.map((clash) => [clash, "both"]));
  const sets = clashes.map((clash, index) => {
    const choose = (answer: Answer) => answers.set(clash, answer);
    return question(clash, `clash-${index}`, choose);
  });
  const done = makeElement("button", { type: "button" }, "Keep as chosen");
  done.addEventListener("click", () => {
    form.hidden = true;
    form.replaceChildren();
    told(answers);
  });
  form.replaceChildren(...sets, done);
  form.hidden = false;
  form.querySelector("input")?.focus();
}

function question(
  { file: { path, title }, isOfBook }: Clash,
  name: string,
  choose: (answer: Answer) => void,
): HTMLElement {
  const owner = isOfBook ? "The book has" : "You keep";
  const legend = `${owner} another ${KINDS[kindOf(path)]} under the name of “${title}”.`;
  const choices: readonly (readonly [Answer, string])[] = [
    ["both", "Keep both, this one under another file name"],
    ...(isOfBook ? [] : [["replace", "Put this one in its place"] as const]),
    ["leave", "Leave this one"],
  ];
  const labels = choices.map(([answer, words]) => {
    const input = makeElement("input", { type: "radio", name, checked: answer === "both" });
    input.addEventListener("change", () => choose(answer));
    return makeElement("label", {}, input, words);
  });
  return makeElement("fieldset", {}, makeElement("legend", {}, legend), ...labels);
}
