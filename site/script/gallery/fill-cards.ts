/** Fills the empty cards of the gallery: each is made after the first card of the page. */
import { type GalleryFacts, STATE_LETTERS } from "../../../src/view/gallery/gallery-facts.ts";
import { theOne } from "../ui/parts.ts";

/** Whose pictures and outcomes they show is still to be set, as it is for all cards of a page. */
export function fillCards(page: Document, { notebooks, patterns }: GalleryFacts): void {
  const model = page.querySelector("[data-group] [data-pattern]");
  const [notebook] = notebooks;
  if (!(model instanceof HTMLElement) || notebook === undefined) return;
  const known = new Set(
    [...page.querySelectorAll<HTMLElement>("[data-pattern]")].map(({ dataset }) => dataset.pattern),
  );
  for (const section of page.querySelectorAll<HTMLElement>("[data-group]")) {
    const empty = [...section.querySelectorAll<HTMLElement>(".card:empty")];
    const missing = patterns.filter(
      ({ slug, purpose }) => purpose === section.dataset.group && !known.has(slug),
    );
    for (const [index, pattern] of missing.entries()) {
      const card = empty[index];
      if (!card) continue;
      card.dataset.pattern = pattern.slug;
      card.append(...cardParts(model, pattern, notebooks));
    }
  }
}

type Pattern = GalleryFacts["patterns"][number];

function cardParts(
  model: HTMLElement,
  { slug, title, states, lines }: Pattern,
  notebooks: readonly string[],
): Iterable<Node> {
  const copy = model.ownerDocument.importNode(model, true);
  const folder = `${slug}/${notebooks[0] ?? ""}`;
  const link = theOne(copy, "a", HTMLAnchorElement);
  link.textContent = title;
  link.setAttribute("href", `${folder}/index.html`);
  const picture = theOne(copy, "img", HTMLImageElement);
  delete picture.dataset.bookSrc;
  picture.setAttribute("src", `${folder}/thumb.svg`);
  const state = theOne(copy, "[data-state]", HTMLElement);
  const withState = (letter: string) => notebooks.filter((_, index) => states[index] === letter);
  state.dataset.even = withState(STATE_LETTERS.even).join(" ");
  state.dataset.misfit = withState(STATE_LETTERS.misfit).join(" ");
  theOne(copy, ".effort", HTMLElement).dataset.lines = lines.join(" ");
  return [...copy.childNodes];
}
