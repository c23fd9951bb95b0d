/** A pattern's page for picked days or for another notebook than it was built for: the engine comes when it is asked for, and the page shows what it works out. */
import type { Device } from "../device/device.ts";
import type { OwnNotebook } from "../device/own-notebook.ts";
import type { LiveView } from "../lazy/dates/dates-part.ts";
import { namesPart } from "../lazy/names/names-part.ts";
import { openNotice } from "../ui/notice.ts";
import { theOne } from "../ui/parts.ts";
import { openStatus } from "../ui/status.ts";
import { type Asking, openAsking, openPart } from "./ask-engine.ts";
import { bindFirstTouch } from "./first-touch.ts";
import { bindOwnDates } from "./own-dates.ts";
import { isOwnSaid, type SaidParts } from "./page-address.ts";
import { openPageLinks } from "./page-links.ts";
import { openAround } from "./show-around.ts";
import { openLivePage } from "./show-live.ts";
import { bindYearRow } from "./year-row.ts";

export interface LivePattern {
  /** Shows the notebook and the days of an address. */
  take(said: SaidParts): Promise<void>;
  /** What is shown in place of what was built; nothing while that is. */
  view(): LiveView | undefined;
}

interface Shows {
  readonly whole: HTMLElement;
  readonly own: OwnNotebook | undefined;
  readonly load: (name: string) => Promise<void>;
  readonly device: Device;
  /** Told of every change, before it is said in the address. */
  readonly shown: (view: LiveView | undefined) => void;
  /** Told of the days that somebody picked. */
  readonly said: (dates: string) => void;
}

/** Enhances the form for days, where there is one: with the first touch of it the engine is loaded. */
export function bindLivePattern(window: Window, shows: Shows): LivePattern {
  const { document } = window;
  const { whole, own, load, device, shown, said } = shows;
  const [say, notice] = [openStatus(document), openNotice(document)];
  const form = document.querySelector<HTMLFormElement>('form[data-part="dates"]') ?? undefined;
  const page = openLivePage(document, whole);
  const { pattern = "", notebook: slug = "" } = whole.dataset;
  const link = openPageLinks(document, { own, built: { slug, title: page.notebook } });
  const data = theOne(document, "#plan-data", HTMLScriptElement);
  const plate = theOne(whole, ".plate", HTMLElement);
  let view: LiveView | undefined;
  let last: SaidParts = { notebook: "", dates: "" };
  const setStale = (isStale: boolean) => plate.classList.toggle("stale", isStale);
  const show = (next: LiveView | undefined, now: SaidParts) => {
    const isBuilt = isAsBuilt(now);
    view = isBuilt ? undefined : next;
    last = now;
    data.textContent = next?.planJson ?? "null";
    link(now);
    page.show(view, now.notebook === own?.said);
    shown(view);
    dates.show(view);
  };
  const again = (asking: Asking) => asking.again();
  // Before days are picked there is nothing to show anew.
  const changed = () => void (open.isUnderWay() && open.now().then(again));
  const dates = bindOwnDates(window, { device, load, changed });
  const open = openOnce(
    async () => {
      const part = await openPart(window, load);
      const names = () => namesPart(window, load);
      const slugs = { pattern, notebook: slug };
      const told = { setStale, changed: show, said, say, showYear, showAround };
      return openAsking(part, { form, slugs, names, eventsIn: dates.eventsIn, ...told });
    },
    () => {
      setStale(false);
      say("It could not be worked out: a part of this page is missing.");
    },
  );
  const begin = () => open.now().then((asking) => asking.begin(last));
  const showYear = bindYearRow(window, { open: begin, goTo: form ?? whole });
  const showAround = openAround(window);
  if (form) bindFirstTouch(form, begin);
  return {
    view: () => view,
    take: async (now) => {
      // What was built needs no engine.
      if (!open.isUnderWay() && isAsBuilt(now)) return show(undefined, now);
      try {
        setStale(true);
        const issue = (await open.now()).take(now);
        setStale(false);
        if (issue === undefined) notice.clear();
        else notice.broken(issue, "What was shown before stays.");
      } catch {
        // It was said already that the part is missing.
      }
    },
  };
}

/** A page of a set-up may lie at the other side. */
function isAsBuilt({ notebook, dates, setup }: SaidParts): boolean {
  return !isOwnSaid(notebook) && dates === "" && setup === undefined;
}

/** Does something at the first call; where that fails it is said, and tried anew at the next. */
function openOnce(start: () => Promise<Asking>, failed: () => void) {
  let opened: Promise<Asking> | undefined;
  return {
    isUnderWay: () => opened !== undefined,
    now: () => {
      opened ??= start();
      opened.catch(() => {
        opened = undefined;
        failed();
      });
      return opened;
    },
  };
}
