/** Keeps the fit page in the address and on the device, and says what came with the address. */
import { sayAddressIssue } from "../../../src/issue/words/say-address-issue.ts";
import { readFitAddress, writeFitAddress } from "../../../src/view/address/fit-address.ts";
import { writeStripAddress } from "../../../src/view/address/strip-address.ts";
import type { StripChoice } from "../../../src/view/fields/strip-fields.ts";
import { bindAddress, TYPING_REST_MS } from "../app/bind-address.ts";
import { keptFit, type Start } from "../app/initial-state.ts";
import { showPersistence } from "../app/show-persistence.ts";
import type { Device } from "../device/device.ts";
import { makeElement } from "../ui/make-element.ts";
import { type Notice, openNotice } from "../ui/notice.ts";
import { partOf } from "../ui/parts.ts";
import type { FitStore } from "./fit-store.ts";
import { bindKeptFit } from "./keep-fit.ts";

interface Keeping {
  readonly device: Device;
  readonly start: Start;
}

/** Writes what was changed in the page; an address alone changes nothing on the device. */
export function bindFitAddress(window: Window, store: FitStore, { device, start }: Keeping): void {
  const notice = openNotice(window.document);
  sayStart(notice, store, { device, start });
  if (start.strip) offerStrip(window.document, store, start.strip);
  showPersistence(window.document, device);
  const kept = bindKeptFit(store, device);
  bindAddress(window, store, {
    restMs: TYPING_REST_MS,
    // The way back leads through the days that were looked at, as through pages.
    step: ({ fit }, before) => (fit.dates === before.fit.dates ? "replace" : "push"),
    write: ({ fit }, before) => (fit === before.fit ? undefined : writeFitAddress(fit)),
    written: (_, before) => {
      kept.keep(before.fit);
      notice.clear();
      showPersistence(window.document, device);
    },
    taken: kept.leave,
    read: (hash, take) => {
      const reading = readFitAddress(hash, store.catalogue.slugs);
      if (!reading.ok)
        notice.broken(sayAddressIssue(reading.issue), "What was shown before stays.");
      else if (Object.keys(reading.value).length > 0) {
        notice.clear();
        const { strip, ...fit } = reading.value;
        take(() => store.update(fit));
        if (strip) offerStrip(window.document, store, strip);
      }
    },
  });
}

/** What is wrong with the address that the page began with, or that it brought another notebook. */
function sayStart(notice: Notice, store: FitStore, { device, start }: Keeping): void {
  const kept = () => keptFit(device, store.catalogue);
  if (start.issue) {
    const instead =
      Object.keys(kept()).length > 0
        ? "What was kept on this device is shown instead."
        : "The usual notebook is shown instead.";
    notice.broken(sayAddressIssue(start.issue), instead);
  } else if (start.isVisit) {
    notice.visit("This notebook came with the link. Yours is still kept here.", () =>
      store.update(kept()),
    );
  }
}

/** A strip that came with the address is for its own page; the words stay, so that it is not lost. */
function offerStrip(page: ParentNode, store: FitStore, strip: StripChoice): void {
  const place = partOf(page, "brought-strip");
  const { notebook } = store.state().fit;
  const href = `../strip/index.html${writeStripAddress({ notebook, strip })}`;
  const link = makeElement("a", { href }, "Open it on your strip’s page");
  place.replaceChildren("This link brings a strip as well. ", link, ".");
  place.hidden = false;
}
