/** Turns what a page leaves open to the reader's choice to one notebook: links, pictures, its name, and how a pattern comes out. */
import { sayCount } from "../../../src/issue/words/say-count.ts";
import { notebooksOf, type OwnNotebook } from "./own-notebook.ts";

/**
 * A card's address ends in `…/pattern/notebook/file`: only the notebook changes. It is `named` in addresses where the
 * page that they lead to would else turn to the keeper's own.
 */
export function openOnNotebook(page: ParentNode, slug: string, isNamed = false): void {
  for (const part of page.querySelectorAll<HTMLElement>("[data-keeper]")) {
    const name = part.dataset.keeper ?? "href";
    const address = part.dataset.bookSrc ?? part.getAttribute(name) ?? "";
    const bare = address.replace(/#.*$/, "").replace(/[^/]+(?=\/[^/]+$)/, slug);
    const opened =
      bare + (isNamed && name === "href" && isOfPattern(part) ? `#v=1&on=${slug}` : "");
    delete part.dataset.bookSrc;
    if (opened !== part.getAttribute(name)) part.setAttribute(name, opened);
  }
  for (const name of page.querySelectorAll<HTMLElement>("[data-shown]")) {
    name.hidden = name.dataset.shown !== slug;
  }
  for (const words of page.querySelectorAll<HTMLElement>("[data-state]")) showState(words, slug);
  const place = notebooksOf(document).indexOf(slug);
  for (const effort of page.querySelectorAll<HTMLElement>("[data-lines]"))
    showLines(effort, Number(effort.dataset.lines?.split(" ")[place] ?? 0));
}

/** Cards of patterns lead to the keeper's own notebook; their pictures stay empty until somebody draws them. */
export function openOnOwn(page: ParentNode, { said }: OwnNotebook): void {
  for (const part of page.querySelectorAll<HTMLElement>("[data-pattern] [data-keeper]")) {
    const name = part.dataset.keeper ?? "href";
    const address = part.getAttribute(name) ?? "";
    if (name === "href") part.setAttribute(name, `${address.replace(/#.*$/, "")}#v=1&${said}`);
    if (name !== "src" || part.dataset.bookSrc !== undefined) continue;
    part.dataset.bookSrc = address;
    part.setAttribute(name, EMPTY_PICTURE);
  }
  for (const words of page.querySelectorAll<HTMLElement>("[data-pattern] [data-state]"))
    showOutcome(words, "over");
  for (const effort of page.querySelectorAll("[data-pattern] .effort")) showLines(effort, 0);
}

/** How many strokes of the pen it takes; nothing is said of what cannot be drawn, or is not known. */
export function showLines(effort: Element, count: number): void {
  const words = count > 0 ? sayCount(count, "line") : NO_LINES;
  // Who watches the page while it is read would else see a change each time.
  if (effort.textContent !== words) effort.textContent = words;
}

/** A line that is empty keeps its height, so that no card moves. */
const NO_LINES = "\u00a0";

/** Of the form of a sheet. */
const EMPTY_PICTURE =
  "data:image/svg+xml,%3Csvg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 148 210'/%3E";

function isOfPattern(part: HTMLElement): boolean {
  return part.closest("[data-pattern]") !== null;
}

function showState(words: HTMLElement, slug: string): void {
  const isOn = (list: string) => (words.dataset[list] ?? "").split(" ").includes(slug);
  showOutcome(words, isOn("misfit") ? "misfit" : isOn("even") ? "even" : "over");
}

/** Shows how a pattern comes out: `even`, `over` or `misfit`. */
export function showOutcome(words: HTMLElement, state: string): void {
  for (const one of words.querySelectorAll<HTMLElement>("[data-when]")) {
    one.hidden = one.dataset.when !== state;
  }
  words.closest(".card")?.classList.toggle("misfit", state === "misfit");
}
