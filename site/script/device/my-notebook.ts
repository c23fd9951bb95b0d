/** The reader's own notebook: remembered between visits, and taken wherever a page leaves the choice to them. */
import type { Device } from "./device.ts";
import { openOnNotebook } from "./open-on-notebook.ts";

/** Opens the page on the notebook last chosen, and lets one be chosen. */
export function keepNotebook(page: Document, device: Device): void {
  const chosen = keptNotebook(page, device);
  if (chosen) openOnNotebook(page, chosen);
  showKept(page, chosen);
  for (const button of page.querySelectorAll<HTMLButtonElement>("[data-keep]")) {
    button.addEventListener("click", () => {
      const slug = button.dataset.keep ?? "";
      device.set("book-notebook", slug);
      openOnNotebook(page, slug);
      showKept(page, slug);
      focusKept(page, slug);
    });
  }
}

/** The notebook last chosen, where the book still has it. */
export function keptNotebook(page: Document, device: Device): string | undefined {
  const known = (page.body.dataset.notebooks ?? "").split(" ");
  const chosen = device.get("book-notebook");
  return chosen && known.includes(chosen) ? chosen : undefined;
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
