/** The keeper's own dates on a page of a pattern or of a set-up: calendar files that are opened in it, kept on the device where that is ticked, and sent nowhere. */
import type { DayRange } from "../../../src/calendar/span.ts";
import type { DatedEvent } from "../../../src/events/events-in.ts";
import type { Device } from "../device/device.ts";
import { keepCalendars, keptCalendars } from "../device/kept-calendars.ts";
import {
  type CalendarPart,
  calendarPart,
  type OpenedCalendar,
} from "../lazy/calendar/calendar-part.ts";
import { theOne } from "../ui/parts.ts";
import { type ShownDays, showOwnDates } from "./show-own-dates.ts";

export interface OwnDates {
  /** What the opened files have in some days. */
  eventsIn(range: DayRange): readonly DatedEvent[];
  /** Lists what the page shows now. */
  show(view: ShownDays | undefined): void;
}

interface Sources {
  readonly device: Device;
  readonly load: (name: string) => Promise<void>;
  /** Told when other files are open. */
  readonly changed: () => void;
}

/** A page of a pattern without dates has no place for them. */
export function bindOwnDates(window: Window, sources: Sources): OwnDates {
  const { document } = window;
  const place = document.querySelector<HTMLElement>('[data-part="own-dates"]');
  return place ? openOwnDates(window, place, sources) : { eventsIn: () => [], show: () => {} };
}

/** A file whose bytes are read when they are wanted, and no more of them than so many. */
interface Source {
  readonly name: string;
  readonly bytes: (most: number) => Promise<Uint8Array>;
}

function openOwnDates(window: Window, place: HTMLElement, sources: Sources): OwnDates {
  const { device, load, changed } = sources;
  const keep = theOne(place, "#keep-calendars", HTMLInputElement);
  let part: CalendarPart | undefined;
  let open: readonly OpenedCalendar[] = [];
  /** What is wrong beside the files themselves. */
  let faults: readonly string[] = [];
  let shown: ShownDays | undefined;
  const keepAll = () => {
    const files = open.map(({ file, kept }) => ({ name: file.path, text: kept }));
    keepCalendars(device, keep.checked ? files : []);
  };
  const setOpen = (files: readonly OpenedCalendar[]) => {
    open = files;
    faults = [];
    if (keep.checked) keepAll();
    show(shown);
    changed();
  };
  const show = (view: ShownDays | undefined) => {
    shown = view;
    const remove = (gone: OpenedCalendar) => setOpen(open.filter((one) => one !== gone));
    showOwnDates(window.document, { place, open, faults, view, part, remove });
  };
  const take = async (files: readonly Source[]) => {
    try {
      const reader = await calendarPart(window, load);
      part = reader;
      // A byte more than is read tells that there is too much.
      const read = files.map(async ({ name, bytes }) =>
        reader.openCalendar(name, await bytes(reader.mostBytes + 1)),
      );
      const opened = await Promise.all(read);
      const names = new Set(opened.map(({ file }) => file.path));
      setOpen([...open.filter(({ file }) => !names.has(file.path)), ...opened]);
    } catch (error) {
      console.error(error);
      faults = ["The file could not be read: a part of this page is missing."];
      show(shown);
    }
  };
  bindPicking(place, take);
  keep.addEventListener("change", keepAll);
  takeKept(device, keep, take);
  place.removeAttribute("data-enhance");
  return {
    eventsIn: (range) => {
      const files = open.map(({ file }) => file);
      const found = part?.eventsIn(files, range);
      faults = found?.issues.map((issue) => part?.said(issue) ?? "") ?? [];
      return found?.events ?? [];
    },
    show,
  };
}

type Take = (files: readonly Source[]) => Promise<void>;

function bindPicking(place: HTMLElement, take: Take): void {
  const field = theOne(place, "#calendar-files", HTMLInputElement);
  field.addEventListener("change", () => {
    const files = [...(field.files ?? [])].map((file) => ({
      name: file.name,
      bytes: async (most: number) => new Uint8Array(await file.slice(0, most).arrayBuffer()),
    }));
    void take(files).finally(() => (field.value = ""));
  });
}

function takeKept(device: Device, keep: HTMLInputElement, take: Take): void {
  const kept = keptCalendars(device);
  keep.checked = kept.length > 0;
  const encoder = new TextEncoder();
  const files = kept.map(({ name, text }) => ({ name, bytes: async () => encoder.encode(text) }));
  if (files.length > 0) void take(files);
}
