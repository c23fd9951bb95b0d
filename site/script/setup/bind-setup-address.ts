/** Keeps the set-up in the address and on the device, follows what other tabs make of it, and says what came with the address. */
import { sayAddressIssue } from "../../../src/issue/words/say-address-issue.ts";
import {
  type AskedSetup,
  readSetupAddress,
  writeSetupAddress,
} from "../../../src/view/address/setup-address.ts";
import { addEntry, patternOnce } from "../../../src/view/setup/edit-setup.ts";
import { bindAddress, TYPING_REST_MS } from "../app/bind-address.ts";
import { followNotebook } from "../app/keepers-notebook.ts";
import { showPersistence } from "../app/show-persistence.ts";
import type { Device } from "../device/device.ts";
import { openEntry } from "../device/kept-entry.ts";
import { type Notice, openNotice } from "../ui/notice.ts";
import type { SetupStore } from "./setup-store.ts";
import { type SetupStart, startSetup } from "./start-setup.ts";

interface Keeping {
  readonly device: Device;
  readonly start: SetupStart;
}

/** Writes what was changed in the page; an address alone changes nothing on the device, but for a layout that it adds. */
export function bindSetupAddress(
  window: Window,
  store: SetupStore,
  { device, start }: Keeping,
): void {
  const { catalogue } = store;
  const notice = openNotice(window.document);
  const textOf = ({ setup, calendar }: AskedSetup) => writeSetupAddress({ setup, calendar });
  const text = () => textOf(store.state().asked);
  const isKept = textOf(startSetup("", device, catalogue).asked) === text();
  const entry = openEntry(device, "setup", { text, isKept });
  entry.subscribe((said) => {
    const reading = readSetupAddress(said);
    if (reading.ok) store.update(shownParts(reading.value));
  });
  const leaveNotebook = followNotebook({
    ...{ device, catalogue },
    notebook: () => store.state().asked.notebook,
    show: (notebook) => store.update({ notebook }),
  });
  const add = (slug: string) => store.edit((pages) => addEntry(pages, patternOnce(slug)));
  sayStart(notice, store, start);
  showPersistence(window.document, device);
  bindAddress(window, store, {
    restMs: TYPING_REST_MS,
    write: ({ asked }, before) => (asked === before.asked ? undefined : writeSetupAddress(asked)),
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
      const reading = readSetupAddress(hash);
      if (!reading.ok)
        return notice.broken(sayAddressIssue(reading.issue), "What was shown before stays.");
      const shown = shownParts(reading.value);
      if (Object.keys(shown).length > 0) take(() => store.update(shown));
      if (reading.value.add !== undefined) add(reading.value.add);
    },
  });
  if (start.add !== undefined) add(start.add);
}

function shownParts({ add: _, ...shown }: Partial<AskedSetup> & { readonly add?: string }) {
  return shown;
}

/** What is wrong with the address, or that it brought something else than what is kept. */
function sayStart(notice: Notice, store: SetupStore, { issue, kept }: SetupStart): void {
  if (issue) notice.broken(sayAddressIssue(issue), "What is kept on this device is shown instead.");
  else if (kept)
    notice.visit("This set-up came with the link. Yours is still kept here.", () =>
      store.update({ setup: kept }),
    );
}
