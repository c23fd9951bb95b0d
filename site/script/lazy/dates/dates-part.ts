/** What the part that plans patterns for picked days and for other notebooks gives to its page, once it is loaded. */

import type { Names } from "../../../../src/calendar/names.ts";
import type { DayRange } from "../../../../src/calendar/span.ts";
import type { DatedEvent } from "../../../../src/events/events-in.ts";
import type { Notebook } from "../../../../src/notebook/notebook.ts";
import type { Plan } from "../../../../src/plan/plan.ts";
import type { When } from "../../../../src/plan/when.ts";
import type { Recipe } from "../../../../src/recipe/recipe.ts";
import type { Catalogue } from "../../../../src/view/catalogue.ts";
import type { AlongView } from "../../../../src/view/draw-along/draw-along-view.ts";
import type { EventLine } from "../../../../src/view/events/event-lines.ts";
import type { DatesChoice } from "../../../../src/view/fields/span-fields.ts";
import type { PlanFacts } from "../../../../src/view/pattern/plan-status.ts";
import type { YearCell, yearOf } from "../../../../src/view/pattern/year-fit.ts";
import type { keptPrinter } from "../../device/kept-printer.ts";
import type { bindSpanPicker } from "../../ui/span-picker.ts";

export interface DatesPart {
  readonly bindSpanPicker: typeof bindSpanPicker;
  /** The choice of what an address says of days, or why it cannot be read; "" is none. */
  readDates(text: string): DatesChoice | string;
  /** What an address says of a choice. */
  writeDates(choice: DatesChoice): string;
  /** The notebook of an address's entries, or why they cannot be read. */
  readNotebook(text: string, catalogue: Catalogue): Notebook | string;
  liveView(asked: LiveQuestion): LiveView;
  /** How a pattern comes out on a notebook, without any days, as a card says it. */
  cardView(recipe: Recipe, notebook: Notebook, book: When): CardView;
  /** Shows patterns of the book on their cards; or why the notebook cannot be read. */
  openCards(question: CardsQuestion): DrawnCards | string;
  /** Nothing for patterns of days and of years. */
  yearView(asked: YearQuestion): YearView | undefined;
  /** The year of the days that are picked. */
  readonly yearOf: typeof yearOf;
  /** How the keeper's printer is corrected: its limits come with the engine. */
  readonly keptPrinter: typeof keptPrinter;
}

export interface LiveQuestion {
  /** The page of a set-up that it is drawn on, as `setup=44`: a single page is planned for the side that it lies on. */
  readonly setup?: string | undefined;
  readonly recipe: Recipe;
  readonly notebook: Notebook;
  readonly choice: DatesChoice;
  readonly book: When;
  /** Of the chosen language, once they are there. */
  readonly names?: Names | undefined;
  /** What calendar files have in some days. */
  readonly eventsIn?: (range: DayRange) => readonly DatedEvent[];
  /** How many minutes the book's clock is ahead of UTC, where it says so. */
  readonly utcOffset?: number | undefined;
}

/** All that a page shows of a pattern for some days on a notebook. */
export interface LiveView {
  readonly when: When;
  readonly plan: Plan;
  /** As it was planned, with the days in its title. */
  readonly recipe: Recipe;
  readonly notebook: Notebook;
  /** On its days, by calendar files. */
  readonly dated: readonly DatedEvent[];
  readonly events: readonly EventLine[];
  /** What an address says of the notebook: the part from # on. */
  readonly notebookAddress: string;
  /** Two for a spread; 0 where it does not fit. */
  readonly pages: number;
  /** Of its files, without an ending. */
  readonly fileName: string;
  readonly planJson: string;
  /** How it comes out, in a sentence. */
  readonly outcome: string;
  /** The classes of a page that prints it. */
  readonly sheet: string;
  /** Nothing where it does not fit. */
  readonly along: AlongView | undefined;
  readonly svg: string;
  /** What there is to say of it. */
  summary(): readonly HTMLElement[];
  pageFile(): string;
  stripFile(): string;
  /** The strip as a picture: its address and its size in CSS pixels, and what the strip has no room for. */
  strip(): StripFacts;
}

export interface StripFacts {
  readonly src: string;
  readonly width: number;
  readonly height: number;
  readonly leftOut: readonly string[];
}

export interface CardsQuestion {
  /** The entries of the notebook in an address. */
  readonly said: string;
  /** The elements of the cards by their patterns. */
  readonly elements: ReadonlyMap<string, HTMLElement>;
  /** Do the cards show this notebook now? */
  readonly isShown: () => boolean;
  /** Told when all outcomes are known. */
  readonly told: (outcomes: ReadonlyMap<string, CardView>) => void;
}

export interface DrawnCards {
  /** Writes all that is known onto the cards once more. */
  again(): void;
}

export interface CardView extends PlanFacts {
  /** Its small drawing: the address, and its size in mm. */
  picture(): { readonly src: string; readonly width: number; readonly height: number };
}

export interface YearQuestion extends Omit<LiveQuestion, "names"> {
  readonly year: number;
  /** As the days that are shown are planned. */
  readonly when: When;
}

/** How a pattern comes out on the spans of a year. */
export interface YearView {
  readonly year: number;
  readonly words: string;
  readonly cells: readonly YearCellView[];
}

export interface YearCellView extends Pick<YearCell, "span" | "name" | "title" | "mark"> {
  /** What an address says of its days. */
  readonly said: string;
  /** The address of its small drawing; cells that come out alike have the same. */
  readonly picture: string;
}

declare global {
  interface Window {
    readonly spanbookDates?: DatesPart;
  }
}

/** The part, loaded if it is not there yet. Rejects where its script cannot be loaded. */
export async function datesPart(
  window: Window,
  load: (name: string) => Promise<void>,
): Promise<DatesPart> {
  await load("dates.js");
  if (window.spanbookDates) return window.spanbookDates;
  throw new Error("the part that plans is not what was expected");
}
