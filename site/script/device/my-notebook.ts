/** The keeper's own notebook: said once, remembered between visits, named in the head of every page, and taken wherever a page leaves the choice to them. */
import { notebookLabel, withoutNotebook } from "../../../src/view/address/notebook-label.ts";
import type { Device } from "./device.ts";
import { keptText, replaceEntry } from "./kept-entry.ts";
import { openOnNotebook, openOnOwn } from "./open-on-notebook.ts";
import { keptNotebook, ownNotebook } from "./own-notebook.ts";

/** Opens the page on the keeper's notebook, and lets one of the book's be chosen. */
export function bindMyNotebook(page: Document, device: Device): void {
  const chosen = keptNotebook(page, device);
  const own = ownNotebook(page, device);
  if (chosen) openOnNotebook(page, chosen);
  else if (own) openOnOwn(page, own);
  if (own) nameOnLinks(page);
  showKept(page, chosen);
  showMine(page, device);
  device.subscribe("notebook", () => showMine(page, device));
  for (const button of page.querySelectorAll<HTMLButtonElement>("[data-keep]")) {
    button.addEventListener("click", () => {
      const { keep: slug = "", address = "" } = button.dataset;
      device.set("book-notebook", slug);
      replaceEntry(device, "notebook", address);
      openOnNotebook(page, slug);
      showKept(page, slug);
      showMine(page, device);
      focusKept(page, slug);
    });
  }
}

/** Links to a pattern on a notebook of the book say so: its page would else turn to the keeper's own. */
function nameOnLinks(page: Document): void {
  for (const link of page.querySelectorAll<HTMLAnchorElement>("a[data-on]"))
    link.hash = `${link.hash || "#v=1"}&on=${link.dataset.on}`;
}

/** Keeps a notebook as the keeper's: by its address, and by its name where the page lists it among the book's. */
export function keepMine(page: Document, device: Device, address: string): void {
  replaceEntry(device, "notebook", address);
  const listed = page.querySelector<HTMLElement>(
    `[data-slug][data-address="${CSS.escape(address)}"]`,
  );
  device.set("book-notebook", listed?.dataset.slug ?? "");
  showKept(page, keptNotebook(page, device));
  showMine(page, device);
}

/** Names the notebook in the head, and lets links that would bring another one open on it. */
export function showMine(page: Document, device: Device): void {
  const label = notebookLabel(keptText(device, "notebook") ?? "");
  for (const words of page.querySelectorAll<HTMLElement>('[data-part="mine"]')) {
    words.textContent = label ?? "";
    words.hidden = label === undefined;
  }
  if (label === undefined) return;
  for (const link of page.querySelectorAll<HTMLAnchorElement>("a[data-mine]"))
    link.hash = withoutNotebook(link.hash);
}

/** A button stands wherever a notebook could be chosen, and words where it is the chosen one. */
function showKept(page: Document, chosen: string | undefined): void {
  for (const button of page.querySelectorAll<HTMLButtonElement>("[data-keep]")) {
    button.hidden = button.dataset.keep === chosen;
  }
  for (const words of page.querySelectorAll<HTMLElement>("[data-kept]")) {
    words.hidden = words.dataset.kept !== chosen;
  }
}

/** The button that was pressed is gone: the words in its place are where one goes on. */
function focusKept(page: Document, slug: string): void {
  const words = page.querySelector<HTMLElement>(`[data-kept="${CSS.escape(slug)}"]`);
  words?.setAttribute("tabindex", "-1");
  words?.focus({ preventScroll: true });
}
