/** Keeps the recipe page in the address and on the device, and follows an address that someone else sets. */
import { sayAddressIssue } from "../../../src/issue/words/say-address-issue.ts";
import { LONGEST_ADDRESS, writeAddress } from "../../../src/view/address/hash-params.ts";
import { notebookEntries } from "../../../src/view/address/notebook-address.ts";
import {
  type RecipeDraft,
  readKeptRecipe,
  readRecipeAddress,
  writeRecipeAddress,
} from "../../../src/view/address/recipe-address.ts";
import { datesEntries } from "../../../src/view/address/span-address.ts";
import { NO_DATES } from "../../../src/view/fields/span-fields.ts";
import { bindAddress, TYPING_REST_MS } from "../app/bind-address.ts";
import { showPersistence } from "../app/show-persistence.ts";
import type { Device } from "../device/device.ts";
import { type KeptEntry, keptText, openEntry } from "../device/kept-entry.ts";
import { openNotice } from "../ui/notice.ts";
import { theOne } from "../ui/parts.ts";
import { askedRecipe, type InitialRecipe, type RecipeTexts } from "./initial-recipe.ts";
import type { RecipeStore } from "./recipe-store.ts";

const WHAT_STAYS = "What was written before stays.";

interface Keeping {
  readonly device: Device;
  readonly start: InitialRecipe;
  readonly texts: () => Promise<RecipeTexts>;
}

/** Writes what was changed on the recipe page; an address alone changes nothing on the device. */
export function bindRecipeAddress(window: Window, store: RecipeStore, keeping: Keeping): void {
  const { device, start, texts } = keeping;
  const { slugs } = store.catalogue;
  const notice = openNotice(window.document);
  const entry = bindKeptRecipe(store, keeping);
  const link = theOne(window.document, "#link", HTMLInputElement);
  const showLink = () => {
    link.value = linkOf(window, writeRecipeAddress(store.state().draft));
  };
  bindAddress(window, store, {
    restMs: TYPING_REST_MS,
    write: ({ draft }, before) => (draft === before.draft ? undefined : shortAddress(draft)),
    written: (_, before) => {
      entry.keep(writeRecipeAddress(before.draft));
      showLink();
      notice.clear();
      showPersistence(window.document, device);
    },
    taken: entry.leave,
    read: async (hash, take) => {
      const reading = readRecipeAddress(hash, slugs);
      if (!reading.ok) {
        notice.broken(sayAddressIssue(reading.issue), WHAT_STAYS);
        return;
      }
      // A pattern's text may have to be loaded first.
      const { from, notebook, dates } = reading.value;
      const written = from === undefined ? {} : await texts();
      const { text, slug, issue } = askedRecipe(reading.value, { device, texts: written });
      if (issue) return notice.broken(sayAddressIssue(issue), WHAT_STAYS);
      const part = {
        ...(notebook && { notebook }),
        ...(slug !== undefined && { slug }),
        // A text without days is for none.
        ...(text !== undefined && { text, dates: NO_DATES }),
        ...(dates && { dates }),
      };
      if (Object.keys(part).length === 0) return;
      take(() => store.update(part));
      showLink();
    },
  });
  showLink();
  showPersistence(window.document, device);
  if (start.issue) {
    const instead =
      start.kept || device.get("recipe")
        ? "The recipe that is kept on this device is shown instead."
        : "An example is shown instead.";
    notice.broken(sayAddressIssue(start.issue), instead);
  } else if (start.kept) {
    const { kept } = start;
    notice.visit("A recipe of yours from before is still kept here.", () => store.update(kept));
  }
}

/** Goes on with what other tabs make of the recipe; the result keeps what this one has made of it. */
function bindKeptRecipe(store: RecipeStore, { device }: Keeping): KeptEntry {
  const { slugs } = store.catalogue;
  const kept = readKeptRecipe(keptText(device, "recipe") ?? "", slugs);
  const text = () => writeRecipeAddress(store.state().draft);
  const isKept = kept !== undefined && writeRecipeAddress(kept) === text();
  const entry = openEntry(device, "recipe", { text, isKept });
  entry.subscribe((said) => {
    const draft = readKeptRecipe(said, slugs);
    if (draft) store.update(draft);
  });
  return entry;
}

/** A recipe that is too long for an address leaves only the notebook there. */
function shortAddress(draft: RecipeDraft): string {
  const address = writeRecipeAddress(draft);
  return address.length <= LONGEST_ADDRESS
    ? address
    : writeAddress([...notebookEntries(draft.notebook), ...datesEntries(draft.dates ?? NO_DATES)]);
}

function linkOf({ location }: Window, address: string): string {
  if (address.length > LONGEST_ADDRESS) return "Too long for a link: save the file instead.";
  return new URL(address, location.href).href;
}
