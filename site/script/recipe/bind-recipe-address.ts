/** Keeps the recipe page in the address and on the device, and follows an address that someone else sets. */
import { sayAddressIssue } from "../../../src/issue/words/say-address-issue.ts";
import { LONGEST_ADDRESS, writeAddress } from "../../../src/view/address/hash-params.ts";
import { notebookEntries } from "../../../src/view/address/notebook-address.ts";
import {
  type RecipeAddress,
  type RecipeDraft,
  readRecipeAddress,
  writeRecipeAddress,
} from "../../../src/view/address/recipe-address.ts";
import { bindAddress } from "../app/bind-address.ts";
import { type Device, KEPT } from "../device/device.ts";
import { openNotice } from "../ui/notice.ts";
import { theOne } from "../ui/parts.ts";
import type { InitialRecipe, RecipeTexts } from "./initial-recipe.ts";
import type { RecipeStore } from "./recipe-store.ts";

interface Keeping {
  readonly device: Device;
  readonly start: InitialRecipe;
  readonly texts: () => Promise<RecipeTexts>;
}

/** Writes what was changed on the recipe page; an address alone changes nothing on the device. */
export function bindRecipeAddress(window: Window, store: RecipeStore, keeping: Keeping): void {
  const { device, start, texts } = keeping;
  const notice = openNotice(window.document);
  const keeper = bindAddress(window, device, { name: KEPT.draft, done: notice.clear });
  const link = theOne(window.document, "#link", HTMLInputElement);
  let last: RecipeDraft = store.state().draft;
  store.tell(({ draft }) => {
    if (draft === last) return;
    last = draft;
    keeper.keep(() => {
      const text = writeRecipeAddress(draft);
      link.value = linkOf(window, text);
      return { text, address: shortAddress(draft, text) };
    });
  });
  link.value = linkOf(window, writeRecipeAddress(last));
  window.addEventListener("hashchange", () => {
    const reading = readRecipeAddress(window.location.hash, store.catalogue.slugs);
    if (!reading.ok) {
      notice.broken(sayAddressIssue(reading.issue), "What was on the desk before stays.");
      return;
    }
    void lay(reading.value);
  });
  /** What an address says, on the recipe page; a pattern's text may have to be loaded first. */
  async function lay({ from, ...said }: RecipeAddress): Promise<void> {
    const written = from === undefined ? undefined : (await texts())[from];
    const text = said.text ?? written;
    const part = { ...said, ...(text !== undefined && { text }) };
    if (Object.keys(part).length > 0) store.change(part);
  }

  if (start.issue) {
    const instead = start.kept || device.recall(KEPT.draft) ? "kept on this device" : "usual";
    notice.broken(sayAddressIssue(start.issue), `What is ${instead} is on the desk instead.`);
  } else if (start.kept) {
    const { kept } = start;
    notice.visit("A recipe of yours from before is still kept here.", () => store.change(kept));
  }
}

/** A recipe that is too long for an address leaves only the notebook there. */
function shortAddress({ notebook }: RecipeDraft, address: string): string {
  return address.length <= LONGEST_ADDRESS ? address : writeAddress(notebookEntries(notebook));
}

function linkOf({ location }: Window, address: string): string {
  if (address.length > LONGEST_ADDRESS) return "Too long for a link: save the file instead.";
  return new URL(address, location.href).href;
}
