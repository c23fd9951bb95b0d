/** The spans of a year as small drawings, each a link that picks its days: does my year fit? */
import { deviceToday } from "../app/today.ts";
import type { DatesPart, YearCellView, YearQuestion, YearView } from "../lazy/dates/dates-part.ts";
import { openQueue } from "../ui/idle-queue.ts";
import { makeElement } from "../ui/make-element.ts";
import { onPress, partOf, theOne } from "../ui/parts.ts";
import { writePageAddress } from "./page-address.ts";

/** Told of every change of the days and of the calendar; the row follows when nothing else is to be done. */
export type ShowYear = (part: DatesPart, asked: YearAsked) => void;

interface YearAsked extends Omit<YearQuestion, "year"> {
  /** What the address says of the notebook. */
  readonly on: string;
}

interface YearRow {
  /** Loads the engine, which then tells what is shown. */
  readonly open: () => Promise<unknown>;
  /** What is looked at when a span has been picked. */
  readonly goTo: Element;
}

const LAST_YEAR = 9999;

/** The row is there once somebody asks for it, or picks days: then the engine is loaded anyway. */
export function bindYearRow(window: Window, { open, goTo }: YearRow): ShowYear {
  const section = window.document.querySelector<HTMLElement>('[data-part="year"]');
  if (!section) return () => undefined;
  const queue = openQueue(window);
  let now: { part: DatesPart; asked: YearAsked } | undefined;
  let isAsked = false;
  let picked: number | undefined;
  let year: number | undefined;
  const show = openRow(section);
  const showSoon = () =>
    queue.put("year", () => {
      if (now) {
        year ??= yearOfToday(now.part, now.asked);
        show(now.part, { ...now.asked, year });
      }
      return false;
    });
  const move = (by: number) => {
    const next = (year ?? 0) + by;
    if (next < 1 || next > LAST_YEAR) return;
    year = next;
    showSoon();
  };
  onPress(section, "year", () => {
    isAsked = true;
    // Where it cannot be loaded, that is said where days are picked.
    void open().then(showSoon, () => undefined);
  });
  onPress(section, "year-before", () => move(-1));
  onPress(section, "year-after", () => move(1));
  partOf(section, "year-cells").addEventListener("click", ({ target }) => {
    if (target instanceof Element && target.closest("a")) goTo.scrollIntoView();
  });
  theOne(section, "[data-enhance]", HTMLElement).removeAttribute("data-enhance");
  return (part, asked) => {
    const { span, rule } = asked.when;
    const next = span && part.yearOf(span, rule);
    if (next !== undefined && next !== picked) year = next;
    picked = next;
    now = { part, asked };
    if (isAsked || span) showSoon();
  };
}

function yearOfToday(part: DatesPart, { when }: YearAsked): number {
  const today = deviceToday();
  return part.yearOf({ kind: "day", from: today, to: today }, when.rule);
}

/** Works a year out when it, the calendar or the notebook is another than before; else only another span of it is marked. */
function openRow(section: HTMLElement): (part: DatesPart, asked: YearAsked & YearQuestion) => void {
  const cells = partOf(section, "year-cells");
  let key = "";
  let view: YearView | undefined;
  return (part, asked) => {
    const { year, choice, when, notebook, on } = asked;
    const next = JSON.stringify([year, choice.calendar, notebook, on]);
    if (next !== key) {
      key = next;
      view = part.yearView(asked);
      cells.replaceChildren(...(view?.cells ?? []).map((cell) => cellElement(cell, on)));
      showWords(section, year, view?.words ?? "");
    }
    for (const [index, link] of cells.querySelectorAll("a").entries()) {
      const isShown = view?.cells[index]?.span.from === when.span?.from;
      if (isShown) link.setAttribute("aria-current", "true");
      else link.removeAttribute("aria-current");
    }
  };
}

function showWords(section: HTMLElement, year: number, words: string): void {
  partOf(section, "year-asked").hidden = true;
  partOf(section, "year-row").hidden = false;
  partOf(section, "year-number").textContent = `${year}`;
  partOf(section, "year-words").textContent = words;
  for (const [doing, next] of [
    ["year-before", year - 1],
    ["year-after", year + 1],
  ] as const) {
    const button = theOne(section, `[data-do="${doing}"]`, HTMLElement);
    button.setAttribute("aria-disabled", String(next < 1 || next > LAST_YEAR));
  }
}

function cellElement(
  { name, title, mark, said, picture }: YearCellView,
  notebook: string,
): HTMLElement {
  const label = mark === "" ? title : `${title}: ${mark}`;
  const link = makeElement(
    "a",
    { href: writePageAddress({ notebook, dates: said, step: "" }), "aria-label": label },
    makeElement("img", { class: "thumb", src: picture, alt: "" }),
    makeElement("b", {}, name),
  );
  return makeElement("li", {}, link, ...(mark === "" ? [] : [makeElement("small", {}, mark)]));
}
