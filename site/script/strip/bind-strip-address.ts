/** Keeps the strip in the address and on the device, follows what other tabs make of it, and says what came with the address. */
import { sayAddressIssue } from "../../../src/issue/words/say-address-issue.ts";
import { sayMissingLayouts } from "../../../src/issue/words/strip-words.ts";
import { layoutsInAddress } from "../../../src/view/address/carried-layouts.ts";
import { readStripAddress, writeStripAddress } from "../../../src/view/address/strip-address.ts";
import { NO_STRIP } from "../../../src/view/fields/strip-fields.ts";
import type { OwnLayout, StripQuestion } from "../../../src/view/strip/strip-result.ts";
import { bindAddress, TYPING_REST_MS } from "../app/bind-address.ts";
import { followNotebook } from "../app/keepers-notebook.ts";
import { isKeptFile, joined, type OwnLayouts } from "../app/own-layouts.ts";
import { showPersistence } from "../app/show-persistence.ts";
import {
  keptStrip,
  layoutsFor,
  namesWith,
  type StripStart,
  startStrip,
} from "../app/start-strip.ts";
import type { Device } from "../device/device.ts";
import { openEntry } from "../device/kept-entry.ts";
import { subscribeFiles } from "../device/kept-files.ts";
import { type Notice, openNotice } from "../ui/notice.ts";
import type { StripStore } from "./strip-store.ts";

interface Keeping {
  readonly device: Device;
  readonly start: StripStart;
  readonly layouts: OwnLayouts;
  /** The keeper's own, as they were when the page was opened. */
  readonly kept: readonly OwnLayout[];
}

/** Writes what was changed in the page; an address alone changes nothing on the device. */
export function bindStripAddress(window: Window, store: StripStore, keeping: Keeping): void {
  const { device, start, layouts } = keeping;
  const { catalogue } = store;
  const notice = openNotice(window.document);
  const { textOf, entry } = bindKeptStrip(store, keeping);
  const leaveNotebook = followNotebook({
    ...{ device, catalogue },
    notebook: () => store.state().asked.notebook,
    show: (notebook) => store.update({ notebook }),
  });
  sayStart(notice, store, start);
  showPersistence(window.document, device);
  let { kept } = keeping;
  subscribeFiles(device, () => {
    void layouts.kept().then((next) => {
      const { asked } = store.state();
      store.update({ own: followed(asked, { kept, next }) });
      kept = next;
    });
  });
  bindAddress(window, store, {
    restMs: TYPING_REST_MS,
    write: ({ asked }, before) => {
      const address = asked === before.asked ? undefined : writeStripAddress(asked);
      return address === writeStripAddress(before.asked) ? undefined : address;
    },
    written: (_, before) => {
      entry.keep(textOf(before.asked));
      if (start.issue) notice.clear();
      showPersistence(window.document, device);
    },
    taken: () => {
      entry.leave();
      leaveNotebook();
    },
    read: async (hash, take) => {
      const carried = layoutsInAddress(hash).length > 0 ? await layouts.carriedBy(hash) : [];
      const known = { carried, kept: joined(kept, store.state().asked.own ?? []) };
      const names = namesWith(catalogue, joined(carried, known.kept));
      const reading = readStripAddress(hash, names);
      if (!reading.ok)
        return notice.broken(sayAddressIssue(reading.issue), "What was shown before stays.");
      const { missing = [], ...said } = reading.value;
      const own = layoutsFor(said, keptStrip(device, catalogue, known.kept), known);
      if (Object.keys(said).length > 0) take(() => store.update({ ...said, own }));
      if (missing.length > 0) notice.say(sayMissingLayouts(missing));
    },
  });
}

/** The strip as it is kept: with the layouts that came along and are no files here. */
function bindKeptStrip(store: StripStore, { device, kept, layouts }: Keeping) {
  const { catalogue } = store;
  const textOf = ({ strip, own = [] }: Pick<StripQuestion, "strip" | "own">) =>
    writeStripAddress({ strip, own: own.filter((one) => !isKeptFile(device, one)) });
  const text = () => textOf(store.state().asked);
  const isKept = textOf(startStrip("", device, catalogue, { carried: [], kept }).asked) === text();
  const entry = openEntry(device, "strip", { text, isKept });
  const take = (said: string, own: readonly OwnLayout[]) => {
    const reading = readStripAddress(said, namesWith(catalogue, own));
    if (reading.ok) store.update({ strip: reading.value.strip ?? NO_STRIP, own });
    return reading.ok && reading.value.missing !== undefined;
  };
  entry.subscribe((said) => {
    const own = store.state().asked.own ?? [];
    // A layout that was kept a moment ago, too, may still have to be read.
    return take(said, own) ? layouts.kept().then((all) => void take(said, all)) : undefined;
  });
  return { textOf, entry };
}

interface Files {
  readonly kept: readonly OwnLayout[];
  readonly next: readonly OwnLayout[];
}

/** The strip goes on with files that another tab has changed; what came along stays, and so does what was removed. */
function followed({ strip, own = [] }: StripQuestion, { kept, next }: Files) {
  const named = new Set([...strip.across, ...strip.down].map(({ slug }) => slug));
  const carried = own.filter(({ slug }) => named.has(slug));
  const isFile = ({ slug, text }: OwnLayout) =>
    kept.some((one) => one.slug === slug && one.text === text);
  return joined(
    joined(
      carried.filter((one) => !isFile(one)),
      next,
    ),
    carried,
  );
}

/** What is wrong with the address, what is missing, or that it brought something else than what is kept. What is kept can be had back as long as the page is open. */
function sayStart(notice: Notice, store: StripStore, { issue, kept, missing }: StripStart): void {
  const mine = () => store.update(kept);
  const lacking = missing.length > 0 ? ` ${sayMissingLayouts(missing)}` : "";
  if (issue) notice.broken(sayAddressIssue(issue), "What is kept on this device is shown instead.");
  else if (kept.strip)
    notice.visit(`This strip came with the link. Yours is still kept here.${lacking}`, mine);
  else if (kept.notebook)
    notice.visit(`This notebook came with the link. Yours is still kept here.${lacking}`, mine);
  else if (lacking) notice.say(lacking.trim());
}
