/** Puts something on the strip: a layout or a plain division, on both sides or on one. */
import { axesOf, carryOn, PLACES, type Place } from "../../../src/view/strip/edit-strip.ts";
import { type StripOffer, stripOffers } from "../../../src/view/strip/strip-offers.ts";
import { type LayoutSearch, openLayoutSearch } from "../app/layout-search.ts";
import { bindOffers } from "../ui/offer-field.ts";
import { theOne } from "../ui/parts.ts";
import type { StripStore } from "./strip-store.ts";

interface Adding {
  readonly say: (words: string) => void;
  readonly load: (name: string) => Promise<void>;
}

/** What was added is said. */
export function bindAddForm(page: ParentNode, store: StripStore, { say, load }: Adding): void {
  const form = theOne(page, '[data-part="add"]', HTMLFormElement);
  const search = openLayoutSearch(window, { load, ready: () => offers.again() });
  const offers = bindOffers(form, {
    prepare: search.prepare,
    offersFor: (text) => offersFor(text, store, search),
    take: (offer) => say(addOffer(store, offer, placeOf(form))),
  });
}

function offersFor(text: string, store: StripStore, search: LayoutSearch): readonly StripOffer[] {
  const { recipes, carried: patterns } = store.catalogue;
  const own = (store.state().asked.own ?? []).map(({ recipe }) => recipe);
  const found = search.find(text, own);
  return stripOffers(text, { recipes, patterns, own, found: found.book, foundOwn: found.own });
}

function placeOf(form: HTMLFormElement): Place {
  const chosen = new FormData(form).get("place");
  return PLACES.find((place) => place === chosen) ?? "both";
}

/** Puts it on the sides that do not have it, and says so. */
function addOffer(store: StripStore, { title, slug, entries }: StripOffer, place: Place): string {
  const before = store.state().asked.strip;
  const axes = axesOf(place);
  const isThere = axes.every((axis) => before[axis].some((entry) => entry.slug === slug));
  if (isThere) return `${title} is on your strip already.`;
  store.edit((strip) => axes.reduce((sum, axis) => carryOn(sum, axis, entries[axis]), strip));
  const after = store.state().asked.strip;
  if (axes.every((axis) => after[axis].length === before[axis].length))
    return "Your strip is full: take something off first.";
  return `${title} is on your strip now${place === "both" ? ", on both sides" : `, ${place}`}.`;
}
