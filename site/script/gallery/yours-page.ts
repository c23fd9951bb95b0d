/** Layouts of one's own in the gallery, above the book's: drawn in the page, each leads to the recipe page. */
import { writeMineAddress } from "../../../src/view/address/mine-address.ts";
import { keptLayouts } from "../app/kept-layouts.ts";
import { openDevice } from "../device/device.ts";
import { keptFiles, subscribeFiles } from "../device/kept-files.ts";
import { layoutsPart, type OwnCard } from "../lazy/layouts/layouts-part.ts";
import { ownAddress, scriptLoader } from "../ui/load-script.ts";
import { makeElement } from "../ui/make-element.ts";
import { partOf } from "../ui/parts.ts";

const script = ownAddress();
const load = scriptLoader(script);
const device = openDevice(window, script);

void show();
subscribeFiles(device, () => void show());
device.subscribe("notebook", () => void show());

/** Nothing is loaded where nothing is kept. */
async function show(): Promise<void> {
  const place = partOf(document, "yours");
  const files = keptFiles(device, "patterns");
  place.hidden = files.length === 0;
  if (files.length === 0) return;
  const { page = "" } = place.dataset;
  const list = partOf(place, "own-cards");
  try {
    const [recipes, part] = await Promise.all([
      keptLayouts(window, device, load),
      layoutsPart(window, load),
      load("../fit/book.js"),
    ]);
    const cards = part.ownCards(recipes, { device, book: window.spanbookContent });
    list.replaceChildren(...cards.map((card) => cardElement(card, page)));
  } catch (error) {
    console.error(error);
    place.hidden = true;
  }
}

const STATES = {
  even: ["even", "Nothing left over"],
  over: ["over", "\u00a0"],
  misfit: ["short", "Does not fit"],
} as const;

function cardElement({ slug, title, state, picture }: OwnCard, page: string): HTMLElement {
  const [look, words] = STATES[state];
  const link = makeElement("a", { href: page + writeMineAddress(slug) }, title);
  const thumb = makeElement("img", {
    class: "thumb",
    src: picture,
    alt: "",
    width: "148",
    height: "210",
  });
  return makeElement(
    "li",
    { class: state === "misfit" ? "card misfit" : "card" },
    makeElement("h3", {}, link),
    makeElement("p", {}, makeElement("span", { class: look }, words)),
    makeElement("div", { class: "frame" }, thumb),
  );
}
