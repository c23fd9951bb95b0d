/** Links of a pattern's page that show the same notebook or the same days, and those that change the notebook. */
import { withNotebook } from "../../../src/view/address/notebook-label.ts";
import type { OwnNotebook } from "../device/own-notebook.ts";
import { makeElement } from "../ui/make-element.ts";
import { partOf } from "../ui/parts.ts";
import { isOwnSaid, type SaidParts, writePageAddress } from "./page-address.ts";

interface Linked {
  /** The keeper's own notebook, where there is one. */
  readonly own: OwnNotebook | undefined;
  /** The notebook that the page was built for. */
  readonly built: { readonly slug: string; readonly title: string };
}

/** Follows what is shown. */
export function openPageLinks(page: Document, linked: Linked): (said: SaidParts) => void {
  const links = (selector: string) => page.querySelectorAll<HTMLAnchorElement>(selector);
  const recipes = [...page.querySelectorAll<HTMLElement>("[data-recipe]")].map((place) => ({
    place,
    hash: place.dataset.recipe ?? "",
  }));
  let before = "";
  return (said) => {
    const { notebook, dates } = said;
    for (const link of links("a[data-same]")) setHash(link, { notebook, dates: "" });
    for (const link of links("a[data-on]"))
      setHash(link, { notebook: linked.own ? `on=${link.dataset.on}` : "", dates });
    for (const link of links("a[data-dates]")) {
      // Somebody else may have changed the rest of it meanwhile.
      const href = link.getAttribute("href") ?? "";
      const end = `&${before}`;
      const bare = before !== "" && href.endsWith(end) ? href.slice(0, -end.length) : href;
      link.setAttribute("href", dates === "" ? bare : `${bare}&${dates}`);
    }
    for (const recipe of recipes) openRecipe(recipe, said);
    before = dates;
    showWays(page, said, linked);
  };
}

interface RecipeOpening {
  readonly place: HTMLElement;
  /** The address's part from # on, for the notebook that the page was built for. */
  readonly hash: string;
}

/** The recipe page opens on what is looked at here. */
function openRecipe({ place, hash: built }: RecipeOpening, { notebook, dates }: SaidParts): void {
  const hash = withNotebook(built, isOwnSaid(notebook) ? notebook : "", dates);
  place.dataset.recipe = hash;
  if (place instanceof HTMLAnchorElement) place.hash = hash;
}

/** An address without anything to say has no #. */
function setHash(link: HTMLAnchorElement, said: SaidParts): void {
  const bare = (link.getAttribute("href") ?? "").replace(/#.*$/, "");
  link.setAttribute("href", bare + writePageAddress({ ...said, step: "" }));
}

/** The way back to the book's notebook, and to the keeper's own. */
function showWays(page: Document, { notebook, dates }: SaidParts, { own, built }: Linked): void {
  const way = (to: string, words: string) =>
    makeElement("a", { href: writePageAddress({ notebook: to, dates, step: "" }) }, words);
  const ways = [
    ...(isOwnSaid(notebook) ? [way(`on=${built.slug}`, built.title)] : []),
    ...(own && own.said !== notebook ? [way(own.said, `your notebook, ${own.label}`)] : []),
  ];
  const place = partOf(page, "whose");
  place.hidden = ways.length === 0;
  place.replaceChildren(
    "Show it for ",
    ...ways.flatMap((each, index) => (index === 0 ? [each] : [" or for ", each])),
    ".",
  );
}
