/** The parts of a page that its script fills, found by the names that the template gave them. */

/** The part with a name. Throws where the template has none: script and template go together. */
export function partOf(page: ParentNode, name: string): HTMLElement {
  return theOne(page, `[data-part="${name}"]`, HTMLElement);
}

/** The one element of a kind that a selector finds. */
export function theOne<E extends Element>(
  page: ParentNode,
  selector: string,
  kind: new () => E,
): E {
  const found = page.querySelector(selector);
  if (found instanceof kind) return found;
  throw new Error(`the page has no ${selector}`);
}

/** Does something when a button is pressed, wherever there are buttons for it. */
export function onPress(page: ParentNode, doing: string, act: (button: HTMLElement) => void): void {
  for (const button of page.querySelectorAll<HTMLElement>(`[data-do="${doing}"]`)) {
    button.addEventListener("click", () => act(button));
  }
}

/** Shows a part that kept its place for a script to wake it. */
export function enhancePart(page: ParentNode, name: string): void {
  partOf(page, name).removeAttribute("data-enhance");
}
