/** Keeps the strip in the address and on the device, follows what other tabs make of it, and says what came with the address. */
import { sayAddressIssue } from "../../../src/issue/words/say-address-issue.ts";
import {
  type AskedStrip,
  readStripAddress,
  writeStripAddress,
} from "../../../src/view/address/strip-address.ts";
import { NO_STRIP } from "../../../src/view/fields/strip-fields.ts";
import { bindAddress, TYPING_REST_MS } from "../app/bind-address.ts";
import { followNotebook } from "../app/keepers-notebook.ts";
import { showPersistence } from "../app/show-persistence.ts";
import { type StripStart, startStrip } from "../app/start-strip.ts";
import type { Device } from "../device/device.ts";
import { openEntry } from "../device/kept-entry.ts";
import { type Notice, openNotice } from "../ui/notice.ts";
import type { StripStore } from "./strip-store.ts";

interface Keeping {
  readonly device: Device;
  readonly start: StripStart;
}

/** Writes what was changed in the page; an address alone changes nothing on the device. */
export function bindStripAddress(
  window: Window,
  store: StripStore,
  { device, start }: Keeping,
): void {
  const { catalogue } = store;
  const notice = openNotice(window.document);
  const textOf = ({ strip }: Pick<AskedStrip, "strip">) => writeStripAddress({ strip });
  const text = () => textOf(store.state().asked);
  const kept = textOf(startStrip("", device, catalogue).asked);
  const entry = openEntry(device, "strip", { text, isKept: kept === text() });
  entry.subscribe((said) => {
    const reading = readStripAddress(said, catalogue.carried);
    if (reading.ok) store.update({ strip: reading.value.strip ?? NO_STRIP });
  });
  const leaveNotebook = followNotebook({
    ...{ device, catalogue },
    notebook: () => store.state().asked.notebook,
    show: (notebook) => store.update({ notebook }),
  });
  sayStart(notice, store, start);
  showPersistence(window.document, device);
  bindAddress(window, store, {
    restMs: TYPING_REST_MS,
    write: ({ asked }, before) => (asked === before.asked ? undefined : writeStripAddress(asked)),
    written: (_, before) => {
      entry.keep(textOf(before.asked));
      if (start.issue) notice.clear();
      showPersistence(window.document, device);
    },
    taken: () => {
      entry.leave();
      leaveNotebook();
    },
    read: (hash, take) => {
      const reading = readStripAddress(hash, catalogue.carried);
      if (!reading.ok)
        notice.broken(sayAddressIssue(reading.issue), "What was shown before stays.");
      else if (Object.keys(reading.value).length > 0) take(() => store.update(reading.value));
    },
  });
}

/** What is wrong with the address, or that it brought something else than what is kept. What is kept can be had back as long as the page is open. */
function sayStart(notice: Notice, store: StripStore, { issue, kept }: StripStart): void {
  const mine = () => store.update(kept);
  if (issue) notice.broken(sayAddressIssue(issue), "What is kept on this device is shown instead.");
  else if (kept.strip)
    notice.visit("This strip came with the link. Yours is still kept here.", mine);
  else if (kept.notebook)
    notice.visit("This notebook came with the link. Yours is still kept here.", mine);
}
