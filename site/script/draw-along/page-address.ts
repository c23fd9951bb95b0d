/** What the address of a pattern's page says: a notebook, days and a step, as in `#v=1&paper=A5&pitch=5&dots=24,35&dates=2027-05&stroke=5`. */

import { addressOfNotebook } from "../../../src/view/address/notebook-label.ts";
import { bindAddress, TYPING_REST_MS } from "../app/bind-address.ts";
import { openStore } from "../app/store.ts";
import { readStepAddress, stepText } from "./step-address.ts";
import type { Stepper } from "./stepper.ts";

/** What is to be shown, as it is written; "" where nothing is said of it. It is read by the part that plans for it. */
export interface SaidParts {
  /** A notebook's entries, or `on=a5` for the one that the page was built for. */
  readonly notebook: string;
  readonly dates: string;
  /** The page of a set-up that it is drawn for, as `setup=44`. */
  readonly setup?: string;
}

export interface PageAddress extends SaidParts {
  readonly step: string;
}

/** The parts of an address. What is not a step, and has no version, is a place on the page such as `#marks`. */
export function readPageAddress(hash: string): PageAddress {
  const parts = hash.replace(/^#/, "").split("&");
  const step = parts.find(isStep) ?? "";
  if (!parts.some((part) => part.startsWith("v="))) return { ...NOTHING_SAID, step };
  const chosen = parts.find((part) => part.startsWith("on="));
  const notebook = chosen ?? addressOfNotebook(hash);
  const own = notebook.split("&");
  const setup = parts.find(isOfSetup);
  const dates = parts.filter(
    (part) =>
      !isStep(part) &&
      !isOfSetup(part) &&
      part !== "v=1" &&
      !own.includes(part) &&
      !part.startsWith("on="),
  );
  return { notebook, dates: dates.join("&"), ...(setup && { setup }), step };
}

function isStep(part: string): boolean {
  return /^(stroke|marks)=|^drawn$/.test(part);
}

function isOfSetup(part: string): boolean {
  return /^setup=\d+$/.test(part);
}

/** The part from # on, "" for none. */
export function writePageAddress({ notebook, dates, setup = "", step }: PageAddress): string {
  const told = [notebook, dates, setup].filter((part) => part !== "");
  const said = [...(told.length === 0 ? [] : ["v=1", ...told]), ...(step === "" ? [] : [step])];
  return said.length === 0 ? "" : `#${said.join("&")}`;
}

const NOTHING_SAID: PageAddress = { notebook: "", dates: "", step: "" };

interface Shown {
  /** Shows what an address says. */
  readonly take: (said: SaidParts) => Promise<void>;
  /** The notebook where an address says nothing of any; "" for the one that the page was built for. */
  readonly usual: string;
}

/** Keeps the address in step with the page; what it gives is to be told of days that were picked. */
export function bindPageAddress(
  window: Window,
  stepper: Stepper,
  { take, usual }: Shown,
): (dates: string) => void {
  const store = openStore<PageAddress>(NOTHING_SAID);
  /** How often something was taken from the address, and what is being taken now. */
  let [count, taking] = [0, 0];
  let timer: ReturnType<typeof setTimeout> | undefined;
  const setNow = (said: SaidParts) => store.set({ ...said, step: stepText(stepper.state()) });
  stepper.subscribe(() => {
    if (taking === 0) setNow(store.state());
  });
  const read = bindAddress(window, store, {
    write: (state, before) =>
      writePageAddress(state) === "" && writePageAddress(before) === ""
        ? undefined
        : writePageAddress(state),
    // The way back leads through what was looked at, not through every stroke.
    step: (state, before) => (taking > 0 || isSame(state, before) ? "replace" : "push"),
    read: (hash, takeHere) => {
      const { step, ...said } = readPageAddress(hash);
      const isSilent = hash !== "" && isSame(said, NOTHING_SAID);
      // A step, or a place on the page: of what is shown already.
      const next =
        isSilent && count > 0 ? store.state() : { ...said, notebook: said.notebook || usual };
      count += 1;
      const go = () => {
        const place = readStepAddress(`#${step}`, stepper.state().steps);
        if (place !== undefined) stepper.go(place);
      };
      if (taking === 0 && isSame(next, store.state())) return takeHere(go);
      clearTimeout(timer);
      const own = count;
      taking = own;
      void take(next).then(() => {
        if (taking !== own) return;
        go();
        setNow(next);
        taking = 0;
      });
    },
  });
  read();
  return (dates) => {
    clearTimeout(timer);
    timer = setTimeout(() => setNow({ ...store.state(), dates }), TYPING_REST_MS);
  };
}

function isSame(one: SaidParts, other: SaidParts): boolean {
  return one.notebook === other.notebook && one.dates === other.dates && one.setup === other.setup;
}

/** Does a notebook of an address bring its own numbers, so that it is not the one that the page was built for? */
export function isOwnSaid(notebook: string): boolean {
  return notebook !== "" && !notebook.startsWith("on=");
}
