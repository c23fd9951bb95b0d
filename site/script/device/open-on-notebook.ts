/** Turns what a page leaves open to the reader's choice to one notebook: links, pictures, its name, and how a pattern comes out. */

/** A card's address ends in `…/pattern/notebook/file`: only the notebook changes. */
export function openOnNotebook(page: ParentNode, slug: string): void {
  for (const part of page.querySelectorAll<HTMLElement>("[data-keeper]")) {
    const name = part.dataset.keeper ?? "href";
    const address = part.getAttribute(name) ?? "";
    const opened = address.replace(/[^/]+(?=\/[^/]+$)/, slug);
    if (opened !== address) part.setAttribute(name, opened);
  }
  for (const name of page.querySelectorAll<HTMLElement>("[data-shown]")) {
    name.hidden = name.dataset.shown !== slug;
  }
  for (const words of page.querySelectorAll<HTMLElement>("[data-state]")) showState(words, slug);
}

function showState(words: HTMLElement, slug: string): void {
  const isOn = (list: string) => (words.dataset[list] ?? "").split(" ").includes(slug);
  const state = isOn("misfit") ? "misfit" : isOn("even") ? "even" : "over";
  for (const one of words.querySelectorAll<HTMLElement>("[data-when]")) {
    one.hidden = one.dataset.when !== state;
  }
  words.closest(".card")?.classList.toggle("misfit", state === "misfit");
}
