/** What the address of a pattern's page says: `#stroke=5`, `#v=1&dates=2027-05`, or both as `#v=1&dates=2027-05&stroke=5`. */
import { bindAddress, TYPING_REST_MS } from "../app/bind-address.ts";
import { openStore } from "../app/store.ts";
import { readStepAddress, stepText } from "./step-address.ts";
import type { Stepper } from "./stepper.ts";

/** Both parts as they are written; "" where there is none. What is said of days is read by the part that plans for them. */
export interface PageAddress {
  readonly dates: string;
  readonly step: string;
}

/** The two parts of an address; a place on the page such as `#marks` is a step that there is not. */
export function readPageAddress(hash: string): PageAddress {
  const parts = hash.replace(/^#/, "").split("&");
  if (!parts.some((part) => part.startsWith("v="))) return { dates: "", step: parts.join("&") };
  const isStep = (part: string) => /^(stroke|marks)=|^drawn$/.test(part);
  return {
    dates: parts.filter((part) => !isStep(part) && part !== "v=1").join("&"),
    step: parts.find(isStep) ?? "",
  };
}

/** The part from # on, "" for none. */
export function writePageAddress({ dates, step }: PageAddress): string {
  const said = [...(dates === "" ? [] : ["v=1", dates]), ...(step === "" ? [] : [step])];
  return said.length === 0 ? "" : `#${said.join("&")}`;
}

/** Where the page is in the address; `take` shows the days of an address that somebody else set. */
export function bindPageAddress(
  window: Window,
  stepper: Stepper,
  take?: (dates: string) => Promise<void>,
): (dates: string) => void {
  const store = openStore<PageAddress>({ dates: "", step: "" });
  let isTaking = false;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const setNow = (dates: string) => store.set({ dates, step: stepText(stepper.state()) });
  stepper.subscribe(() => {
    if (!isTaking) setNow(store.state().dates);
  });
  const read = bindAddress(window, store, {
    write: (state, before) =>
      writePageAddress(state) === "" && writePageAddress(before) === ""
        ? undefined
        : writePageAddress(state),
    // The way back leads through the days that were looked at, not through every stroke.
    step: ({ dates }, before) => (isTaking || dates === before.dates ? "replace" : "push"),
    read: (hash, takeHere) => {
      const { dates, step } = readPageAddress(hash);
      const go = () => {
        const place = readStepAddress(`#${step}`, stepper.state().steps);
        if (place !== undefined) stepper.go(place);
      };
      if (!take || dates === store.state().dates) return takeHere(go);
      clearTimeout(timer);
      isTaking = true;
      void take(dates).then(() => {
        go();
        setNow(dates);
        isTaking = false;
      });
    },
  });
  read();
  return (dates) => {
    clearTimeout(timer);
    timer = setTimeout(() => setNow(dates), TYPING_REST_MS);
  };
}

/** Links to pages that can show the same days: they carry what the address says of them, and none where it says nothing. */
export function openDatedLinks(page: ParentNode): (dates: string) => void {
  const links = page.querySelectorAll<HTMLAnchorElement>("a[data-dates]");
  let before = "";
  return (dates) => {
    for (const link of links) {
      // Somebody else may have changed the rest of it meanwhile.
      const bare = withoutDates(link.getAttribute("href") ?? "", before);
      const said = bare.includes("#") ? `&${dates}` : writePageAddress({ dates, step: "" });
      link.setAttribute("href", dates === "" ? bare : bare + said);
    }
    before = dates;
  };
}

function withoutDates(href: string, dates: string): string {
  if (dates === "") return href;
  const ends = [writePageAddress({ dates, step: "" }), `&${dates}`];
  const end = ends.find((each) => href.endsWith(each)) ?? "";
  return href.slice(0, href.length - end.length);
}
