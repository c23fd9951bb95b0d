/** Shows the keeper's own dates on a page: the files that are open, what is wrong with them, and what is on the days that are shown. */
import type { DayRange } from "../../../src/calendar/span.ts";
import type { CalendarFile } from "../../../src/events/calendar-file.ts";
import { sayCount } from "../../../src/issue/words/say-count.ts";
import type { EventLine } from "../../../src/view/events/event-lines.ts";
import type { CalendarPart, OpenedCalendar } from "../lazy/calendar/calendar-part.ts";
import { codeParagraph, makeElement } from "../ui/make-element.ts";
import { partOf, theOne } from "../ui/parts.ts";

/** The days that a page shows, and what is on them. */
export interface ShownDays {
  readonly when: { readonly span?: DayRange };
  readonly events: readonly EventLine[];
}

interface Shown {
  /** Where files are opened. */
  readonly place: HTMLElement;
  readonly open: readonly OpenedCalendar[];
  readonly faults: readonly string[];
  readonly view: ShownDays | undefined;
  /** There once a file was opened. */
  readonly part: CalendarPart | undefined;
  readonly remove: (file: OpenedCalendar) => void;
}

/** In the place of what was shown before. */
export function showOwnDates(page: Document, shown: Shown): void {
  const { place, open, faults, view, part, remove } = shown;
  showFiles(place, open, remove);
  const issues = open.flatMap(({ file }) => saidOf(file.issues, part));
  showSaid(partOf(place, "calendar-faults"), [...issues, ...faults]);
  const notes = open.flatMap(({ file }) => saidOf(file.notes, part));
  showSaid(partOf(place, "calendar-notes"), notes);
  showEvents(page, open.length, view);
}

function saidOf(
  facts: CalendarFile["issues"] | CalendarFile["notes"],
  part: CalendarPart | undefined,
): readonly string[] {
  return facts.map((fact) => part?.said(fact) ?? "");
}

function showFiles(
  place: HTMLElement,
  open: readonly OpenedCalendar[],
  remove: (file: OpenedCalendar) => void,
): void {
  const rows = open.map((one) => {
    const { path, events } = one.file;
    const unseen = makeElement("span", { class: "unseen" }, ` ${path}`);
    const button = makeElement("button", { type: "button" }, "Remove", unseen);
    button.addEventListener("click", () => {
      remove(one);
      theOne(place, "#calendar-files", HTMLInputElement).focus();
    });
    const words = makeElement(
      "span",
      {},
      makeElement("bdi", {}, path),
      `: ${sayCount(events.length, "event")}`,
    );
    return makeElement("li", {}, words, " ", button);
  });
  partOf(place, "calendar-list").replaceChildren(...rows);
  partOf(place, "keep-calendars").hidden = open.length === 0;
}

/** More of one file have one cause. */
const MOST_SAID = 20;

function showSaid(part: HTMLElement, all: readonly string[]): void {
  const rest = all.length - MOST_SAID;
  const said = [...all.slice(0, MOST_SAID), ...(rest > 0 ? [`… and ${rest} more.`] : [])];
  part.replaceChildren(...said.map((words) => codeParagraph(words)));
  part.hidden = all.length === 0;
}

/** All of them, since a box may have no room for some or for the whole of a title. */
function showEvents(page: Document, files: number, view: ShownDays | undefined): void {
  const lines = view?.events ?? [];
  const section = partOf(page, "own-events");
  section.hidden = lines.length === 0;
  partOf(page, "own-events-list").replaceChildren(
    ...lines.map(({ dates, time, title }) => {
      const when = makeElement("span", {}, time === undefined ? dates : `${dates}, ${time}`);
      return makeElement("li", {}, when, " ", makeElement("bdi", {}, title));
    }),
  );
  partOf(page, "calendar-words").textContent = wordsFor(files, view);
}

function wordsFor(files: number, view: ShownDays | undefined): string {
  if (files === 0) return "";
  if (!view?.when.span) return "Pick days above to see them on the page.";
  const count = view.events.length;
  return count === 0
    ? "None of them is on these days."
    : `${sayCount(count, "event")} on these days.`;
}
