/** Elements of a page, made from what they are and what is in them; text is never read as markup. */

type ElementContent = Node | string;

/** An element with attributes; an attribute that is false is left out, one that is true is there without a value. */
export function makeElement<K extends keyof HTMLElementTagNameMap>(
  name: K,
  attributes: Readonly<Record<string, string | boolean>> = {},
  ...content: readonly ElementContent[]
): HTMLElementTagNameMap[K] {
  const element = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) {
    if (value !== false) element.setAttribute(key, value === true ? "" : value);
  }
  element.append(...content);
  return element;
}

/** A paragraph of a report's words: what stands between back quotes is code. */
export function codeParagraph(words: string, look = ""): HTMLElement {
  const parts = words
    .split("`")
    .map((part, index) => (index % 2 === 1 ? makeElement("code", {}, part) : part));
  return makeElement("p", look === "" ? {} : { class: look }, ...parts);
}
