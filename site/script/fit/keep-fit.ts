/** Keeps the bench in the address and on the device, and follows an address that someone else sets. */
import { sayAddressProblem } from "../../../src/problem/say-address-problem.ts";
import { type Device, KEPT } from "../page/device.ts";
import { makeElement } from "../page/make-element.ts";
import { partOf } from "../page/parts.ts";
import type { Bench } from "./bench.ts";
import { readFitAddress, writeFitAddress } from "./fit-address.ts";
import { keptFit, type Start } from "./start-fit.ts";

/** Browsers refuse an address that changes at every key press for long. */
const REST_MS = 250;

/** Writes what was changed in the page; an address alone changes nothing on the device. */
export function keepFit(window: Window, bench: Bench, { device, start }: Keeping): void {
  const { document, history, location } = window;
  const notice = openNotice(document);
  let timer: ReturnType<typeof setTimeout> | undefined;
  let isFirst = true;
  bench.tell(({ fit }) => {
    if (isFirst) {
      isFirst = false;
      return;
    }
    clearTimeout(timer);
    timer = setTimeout(() => {
      const address = writeFitAddress(fit);
      device.keep(KEPT.fit, address);
      setAddress(history, address);
      notice.clear();
    }, REST_MS);
  });
  window.addEventListener("hashchange", () => {
    const reading = readFitAddress(location.hash, bench.shelf.slugs);
    if (reading.ok) {
      notice.clear();
      if (Object.keys(reading.value).length > 0) bench.change(reading.value);
    } else notice.broken(sayAddressProblem(reading.problem), "What was shown before stays.");
  });
  if (start.problem) {
    const instead = device.recall(KEPT.fit)
      ? "What was kept on this device is shown instead."
      : "The usual notebook is shown instead.";
    notice.broken(sayAddressProblem(start.problem), instead);
  } else if (start.isVisit) {
    notice.visit(() => {
      clearTimeout(timer);
      bench.change(keptFit(device, bench.shelf));
    });
  }
}

interface Keeping {
  readonly device: Device;
  readonly start: Start;
}

function setAddress(history: History, address: string): void {
  try {
    history.replaceState(null, "", address);
  } catch {
    // The next change will try again.
  }
}

function openNotice(document: Document) {
  const place = partOf(document, "notice");
  const show = (...content: readonly (Node | string)[]) => {
    place.replaceChildren(...content);
    place.hidden = content.length === 0;
  };
  return {
    clear: () => show(),
    broken: (what: string, instead: string) =>
      show(`The address of this page cannot be read. ${what} ${instead}`),
    visit: (back: () => void) => {
      const mine = makeElement("button", { type: "button" }, "Show mine");
      mine.addEventListener("click", back);
      show("This is a notebook that came with the link. Yours is still kept here. ", mine);
    },
  };
}
