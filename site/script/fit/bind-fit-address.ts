/** Keeps the page in the address and on the device, and follows an address that someone else sets. */
import { sayAddressIssue } from "../../../src/issue/words/say-address-issue.ts";
import { readFitAddress, writeFitAddress } from "../../../src/view/address/fit-address.ts";
import { bindAddress } from "../app/bind-address.ts";
import { keptFit, type Start } from "../app/initial-state.ts";
import { type Device, KEPT } from "../device/device.ts";
import { openNotice } from "../ui/notice.ts";
import type { FitStore } from "./fit-store.ts";

interface Keeping {
  readonly device: Device;
  readonly start: Start;
}

/** Writes what was changed in the page; an address alone changes nothing on the device. */
export function bindFitAddress(window: Window, store: FitStore, { device, start }: Keeping): void {
  const notice = openNotice(window.document);
  const keeper = bindAddress(window, device, { name: KEPT.fit, done: notice.clear });
  let isFollowing = true;
  let last: unknown;
  store.tell(({ fit }) => {
    const isOld = fit === last;
    last = fit;
    if (isFollowing || isOld) return;
    keeper.keep(() => {
      const address = writeFitAddress(fit);
      return { text: address, address };
    });
  });
  isFollowing = false;
  const follow = (act: () => void) => {
    isFollowing = true;
    act();
    isFollowing = false;
  };
  window.addEventListener("hashchange", () => {
    const reading = readFitAddress(window.location.hash, store.catalogue.slugs);
    keeper.drop();
    if (!reading.ok) notice.broken(sayAddressIssue(reading.issue), "What was shown before stays.");
    else if (Object.keys(reading.value).length > 0) {
      notice.clear();
      follow(() => store.change(reading.value));
    }
  });
  if (start.issue) {
    const instead = device.recall(KEPT.fit)
      ? "What was kept on this device is shown instead."
      : "The usual notebook is shown instead.";
    notice.broken(sayAddressIssue(start.issue), instead);
  } else if (start.isVisit) {
    notice.visit("This is a notebook that came with the link. Yours is still kept here.", () =>
      store.change(keptFit(device, store.catalogue)),
    );
  }
}
