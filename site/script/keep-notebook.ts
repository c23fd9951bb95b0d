/** The keeper's own notebook: remembered between visits, and taken wherever a page leaves the choice to them. */

const KEY = "spanbook.notebook";

/** Turns every link and picture that a page leaves open to the notebook last chosen, and lets it be chosen. */
export function keepNotebook(page: Document, storage: Storage): void {
  const known = (page.body.dataset.notebooks ?? "").split(" ");
  const chosen = recall(storage);
  if (chosen && known.includes(chosen)) openOn(page, chosen);
  for (const button of page.querySelectorAll<HTMLButtonElement>("[data-keep]")) {
    const slug = button.dataset.keep ?? "";
    showKept(page, button, chosen === slug);
    button.addEventListener("click", () => {
      remember(storage, slug);
      openOn(page, slug);
      showKept(page, button, true);
    });
  }
}

/** A card's address ends in `…/pattern/notebook/file`: only the notebook changes. */
function openOn(page: Document, slug: string): void {
  for (const part of page.querySelectorAll<HTMLElement>("[data-keeper]")) {
    const name = part.dataset.keeper ?? "href";
    const address = part.getAttribute(name) ?? "";
    part.setAttribute(name, address.replace(/[^/]+(?=\/[^/]+$)/, slug));
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

function showKept(page: Document, button: HTMLButtonElement, isKept: boolean): void {
  button.hidden = isKept;
  for (const words of page.querySelectorAll<HTMLElement>("[data-kept]")) words.hidden = !isKept;
}

/** A browser may refuse storage, from disk above all; the choice then lasts as long as the page. */
function recall(storage: Storage): string | undefined {
  try {
    return storage.getItem(KEY) ?? undefined;
  } catch {
    return undefined;
  }
}

function remember(storage: Storage, slug: string): void {
  try {
    storage.setItem(KEY, slug);
  } catch {
    // Nothing is lost but the memory of it.
  }
}
