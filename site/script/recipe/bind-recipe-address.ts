/** Keeps the desk in the address and on the device, and follows an address that someone else sets. */
import { sayAddressIssue } from "../../../src/issue/words/say-address-issue.ts";
import { LONGEST_ADDRESS, writeAddress } from "../../../src/view/address/hash-params.ts";
import { notebookEntries } from "../../../src/view/address/notebook-address.ts";
import {
  type Desk,
  type DeskAddress,
  readDeskAddress,
  writeDeskAddress,
} from "../../../src/view/address/recipe-address.ts";
import { openKeeper } from "../app/bind-address.ts";
import { type Device, KEPT } from "../device/device.ts";
import { openNotice } from "../ui/notice.ts";
import { theOne } from "../ui/parts.ts";
import type { DeskStart, RecipeTexts } from "./initial-recipe.ts";
import type { DeskBench } from "./recipe-store.ts";

interface Keeping {
  readonly device: Device;
  readonly start: DeskStart;
  readonly texts: () => Promise<RecipeTexts>;
}

/** Writes what was changed on the desk; an address alone changes nothing on the device. */
export function keepDesk(window: Window, bench: DeskBench, keeping: Keeping): void {
  const { device, start, texts } = keeping;
  const notice = openNotice(window.document);
  const keeper = openKeeper(window, device, { name: KEPT.desk, done: notice.clear });
  const link = theOne(window.document, "#link", HTMLInputElement);
  let last: Desk = bench.lying().desk;
  bench.tell(({ desk }) => {
    if (desk === last) return;
    last = desk;
    keeper.keep(() => {
      const text = writeDeskAddress(desk);
      link.value = linkOf(window, text);
      return { text, address: shortAddress(desk, text) };
    });
  });
  link.value = linkOf(window, writeDeskAddress(last));
  window.addEventListener("hashchange", () => {
    const reading = readDeskAddress(window.location.hash, bench.shelf.slugs);
    if (!reading.ok) {
      notice.broken(sayAddressIssue(reading.issue), "What was on the desk before stays.");
      return;
    }
    void lay(reading.value);
  });
  /** What an address says, on the desk; a pattern's text may have to be loaded first. */
  async function lay({ from, ...said }: DeskAddress): Promise<void> {
    const written = from === undefined ? undefined : (await texts())[from];
    const text = said.text ?? written;
    const part = { ...said, ...(text !== undefined && { text }) };
    if (Object.keys(part).length > 0) bench.change(part);
  }

  if (start.issue) {
    const instead = start.kept || device.recall(KEPT.desk) ? "kept on this device" : "usual";
    notice.broken(sayAddressIssue(start.issue), `What is ${instead} is on the desk instead.`);
  } else if (start.kept) {
    const { kept } = start;
    notice.visit("A recipe of yours from before is still kept here.", () => bench.change(kept));
  }
}

/** A recipe that is too long for an address leaves only the notebook there. */
function shortAddress({ notebook }: Desk, address: string): string {
  return address.length <= LONGEST_ADDRESS ? address : writeAddress(notebookEntries(notebook));
}

function linkOf({ location }: Window, address: string): string {
  if (address.length > LONGEST_ADDRESS) return "Too long for a link: save the file instead.";
  return new URL(address, location.href).href;
}
