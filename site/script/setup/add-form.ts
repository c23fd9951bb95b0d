/** Puts a layout on the pages, at the end or into a block, or a block that repeats what is put into it. */
import type { SetupEntry } from "../../../src/recipe/setup-recipe.ts";
import { addEntry, type EntryPath, entryAt } from "../../../src/view/setup/edit-setup.ts";
import { type SetupOffer, setupOffers } from "../../../src/view/setup/setup-offers.ts";
import { openLayoutSearch } from "../app/layout-search.ts";
import { makeElement } from "../ui/make-element.ts";
import { bindOffers } from "../ui/offer-field.ts";
import { partOf, theOne } from "../ui/parts.ts";
import type { SetupStore } from "./setup-store.ts";

interface Adding {
  readonly say: (words: string) => void;
  readonly load: (name: string) => Promise<void>;
}

/** A new block is what the next layouts go into. */
export function bindAddForm(page: ParentNode, store: SetupStore, { say, load }: Adding): void {
  const form = theOne(page, '[data-part="add"]', HTMLFormElement);
  const showInto = bindInto(form, store);
  const search = openLayoutSearch(window, { load, ready: () => offers.again() });
  const offers = bindOffers(form, {
    prepare: search.prepare,
    offersFor: (text) => {
      const { own } = store.state();
      const { recipes: ofBook } = store.catalogue;
      const recipes = [...ofBook, ...own];
      const among = search.find(text, own);
      const ownPlaces = among.own?.map((place) => place + ofBook.length) ?? [];
      const found = [...ownPlaces, ...(among.book ?? [])];
      const into = entryAt(store.state().asked.setup.pages, intoOf(form));
      const within = into?.kind === "each" ? into.each : undefined;
      return setupOffers(text, {
        recipes,
        own: new Set(own.map(({ slug }) => slug)),
        within,
        found,
      });
    },
    take: ({ title, entry }: SetupOffer) => {
      const before = store.state().asked.setup.pages;
      const into = intoOf(form);
      store.edit((pages) => addEntry(pages, entry, into));
      const { pages } = store.state().asked.setup;
      if (pages === before)
        return say("A set-up has at most 100 entries: take something out first.");
      if (entry.kind === "each") showInto(`${pages.length - 1}`);
      say(saidAdded(title, pages, into));
    },
  });
}

function saidAdded(title: string, pages: readonly SetupEntry[], into: EntryPath): string {
  const block = into === "" ? undefined : entryAt(pages, into);
  return block?.kind === "each" ? `${title} comes each ${block.each} now.` : `${title} is added.`;
}

function intoOf(form: HTMLFormElement): EntryPath {
  const chosen = new FormData(form).get("into");
  return typeof chosen === "string" ? chosen : "";
}

/** The blocks that there are, to be chosen from; what it gives chooses one. */
function bindInto(form: HTMLFormElement, store: SetupStore): (path: EntryPath) => void {
  const place = partOf(form, "into");
  const choices = partOf(place, "into-choices");
  let [chosen, last] = ["", ""];
  const show = () => {
    const { pages } = store.state().asked.setup;
    const blocks = pages.flatMap((entry, index) =>
      entry.kind === "each" ? [[`${index}`, `each ${entry.each}`] as const] : [],
    );
    if (!blocks.some(([path]) => path === chosen)) chosen = "";
    const key = JSON.stringify([blocks, chosen]);
    if (key === last) return;
    last = key;
    place.hidden = blocks.length === 0;
    choices.replaceChildren(
      ...[["", "at the end"] as const, ...blocks].map(([path, words]) =>
        radio(path, path === "" ? words : `into ${words}`, path === chosen),
      ),
    );
  };
  place.addEventListener("change", () => {
    chosen = intoOf(form);
    theOne(form, "#find", HTMLInputElement).focus();
  });
  store.subscribe(show);
  return (path) => {
    chosen = path;
    show();
  };
}

function radio(value: string, words: string, checked: boolean): HTMLElement {
  const input = makeElement("input", { type: "radio", name: "into", value, autocomplete: "off" });
  input.checked = checked;
  return makeElement("label", {}, input, ` ${words}`);
}
