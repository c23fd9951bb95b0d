/** A page's button that puts what the page shows on the keeper's strip, and says what came of it. */
import { sayAddedToStrip } from "../../../src/issue/words/strip-words.ts";
import type { AddedToStrip } from "../../../src/view/address/add-to-strip.ts";
import { makeElement } from "../ui/make-element.ts";
import { onPress, partOf } from "../ui/parts.ts";

/** Enhances the button, which adds, or says itself why not; the words beside it lead to the strip. */
export function bindAddToStrip(page: ParentNode, add: () => AddedToStrip | undefined): void {
  const place = partOf(page, "added");
  onPress(page, "add-to-strip", (button) => {
    const added = add();
    if (!added) return place.replaceChildren();
    const { outcome, count } = added;
    const link = makeElement("a", { href: button.dataset.strip ?? "" }, "Go to your strip");
    place.replaceChildren(`${sayAddedToStrip(outcome, count)} `, link);
  });
  for (const button of page.querySelectorAll<HTMLElement>('[data-do="add-to-strip"]'))
    button.hidden = false;
}
