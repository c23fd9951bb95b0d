/** A button that shows a sign and is called by words. */
import { makeElement } from "./make-element.ts";

/** One that does nothing just now keeps its place, and the focus. */
export function signButton(
  [kind, sign, words]: readonly [kind: string, sign: string, words: string],
  isOff: boolean,
  act: () => void,
): HTMLElement {
  const button = makeElement(
    "button",
    {
      type: "button",
      class: "sign",
      "data-kind": kind,
      title: words,
      "aria-disabled": isOff && "true",
    },
    makeElement("span", { "aria-hidden": "true" }, sign),
    makeElement("span", { class: "unseen" }, words),
  );
  button.addEventListener("click", () => {
    if (!isOff) act();
  });
  return button;
}
