/** The book as its pages see it: lists with links to make, and one view for each page. */
import type { SpanKind } from "../../calendar/span.ts";
import type { Purpose } from "../../recipe/recipe.ts";
import type { NotebookEntry, Pair } from "../../view/entries.ts";
import type { GalleryGroup } from "../../view/gallery/gallery-groups.ts";
import type { AxisTables } from "../../view/notebook/axis-tables.ts";
import type { AxisFact } from "../../view/notebook/notebook-facts.ts";
import type { AroundPattern } from "../../view/pattern/around-pattern.ts";
import type { PatternCard, PurposeGroup } from "../../view/pattern/pattern-cards.ts";
import type { PatternView } from "../../view/pattern/pattern-view.ts";
import type { PlanStatus } from "../../view/pattern/plan-status.ts";
import type { SetupPair } from "../../view/setup/setup-view.ts";
import type { StripPair } from "../../view/strip/strip-view.ts";
import type { AskPdf } from "../artifacts/pdf/ask-pdf.ts";
import type { ListFile, SideFile } from "../artifacts/side-files.ts";
import { NO_SETUPS, type SetupBook } from "./setup-pages.ts";
import { NO_STRIPS, type StripBook } from "./strip-pages.ts";

export interface Book {
  readonly title: string;
  /** The address the book will have, where its host has told one. */
  readonly url: string;
  /** The media type of its feed. */
  readonly feedType: string;
  /** In the book's order; pages that name no notebook take the first. */
  readonly notebooks: readonly NotebookEntry[];
  /** At how many CSS pixels a millimetre notebooks stand side by side. */
  readonly paperScale: number;
  /** In the usual order of purposes; only those that have a pattern. */
  readonly groups: readonly PurposeGroup[];
  /** The same as the gallery opens with them. */
  readonly gallery: readonly GalleryGroup[];
  /** What the front page draws for today, on the first notebook. */
  readonly todays: readonly PatternCard[];
  /** Every tag once, in the order of the alphabet. */
  readonly tags: readonly string[];
  /** Every page of a pattern, a strip or a notebook. */
  readonly all: BookPages;
  readonly strips: StripBook;
  readonly setups: SetupBook;
  patternPage(pair: Pair): PatternPage;
  notebookPage(slug: string): NotebookPage;
  /** The drawing of equal parts on the first notebook; "" in a book without one. */
  frontSvg(): string;
  readonly keys: PageKeys;
  /** Everything that lies beside these pages, one file after another. */
  sideFiles(pages: BookPages): Iterable<SideFile>;
  /** Everything that is about all of the book. */
  readonly listFiles: readonly ListFile[];
  /** Makes a PDF file when it is asked for: a build makes them all on a thread of their own. */
  askPdf: AskPdf;
}

/** For each page, what changes with everything that it shows. */
export interface PageKeys {
  /** Of what stands on every page. */
  readonly shared: string;
  /** Of the pages that list all patterns, strips and notebooks. */
  lists(): string;
  pair(pair: Pair): string;
  strip(pair: StripPair): string;
  setup(pair: SetupPair): string;
  notebook(slug: string): string;
}

/** Pages of which a book has many. */
export interface BookPages {
  /** Of a pattern on a notebook. */
  readonly pairs: readonly Pair[];
  readonly strips: readonly StripPair[];
  readonly setups: readonly SetupPair[];
  /** By their slugs. */
  readonly notebooks: readonly string[];
}

const NO_PAGES: BookPages = { pairs: [], strips: [], setups: [], notebooks: [] };

export interface PatternPage {
  readonly title: string;
  readonly purpose: { readonly slug: Purpose; readonly title: string };
  readonly tags: readonly string[];
  readonly notebook: NotebookEntry;
  readonly state: PlanStatus;
  readonly shown: PatternView;
  readonly bodyHtml: string;
  /** The recipe's front matter as written, highlighted. */
  readonly sourceHtml: string;
  /** The title of the folder that the book builds on and has it from; "" for the book's own. */
  readonly origin: string;
  readonly around: AroundPattern;
  /** Where the recipe can be changed on this notebook, and where the pattern can be tried on any other: the parts from # on. */
  /** The kind of days that it stands for, where it has any. */
  readonly dates?: SpanKind;
  readonly recipeHash: string;
  readonly fitHash: string;
}

export interface NotebookPage {
  readonly entry: NotebookEntry;
  readonly bodyHtml: string;
  readonly sourceHtml: string;
  /** The title of the folder that the book builds on and has it from; "" for the book's own. */
  readonly origin: string;
  readonly gridSvg: string;
  readonly partsSvg: string;
  readonly facts: readonly AxisFact[];
  readonly axes: readonly AxisTables[];
  /** All patterns, by how they come out here. */
  readonly states: readonly StateGroup[];
  readonly fitting: number;
  readonly even: number;
}

/** Patterns that come out alike on one notebook, by purpose. */
export interface StateGroup {
  readonly state: PlanStatus;
  readonly title: string;
  readonly cards: readonly PatternCard[];
}

/** Only its front page can be opened. */
export function emptyBook(): Book {
  const noPage = (): never => {
    throw new RangeError("an empty book has no pages");
  };
  return {
    title: "Spanbook",
    url: "",
    feedType: "",
    notebooks: [],
    paperScale: 1,
    groups: [],
    gallery: [],
    todays: [],
    tags: [],
    all: NO_PAGES,
    strips: NO_STRIPS,
    setups: NO_SETUPS,
    patternPage: noPage,
    notebookPage: noPage,
    frontSvg: () => "",
    keys: {
      shared: "",
      lists: () => "",
      pair: noPage,
      strip: noPage,
      setup: noPage,
      notebook: noPage,
    },
    sideFiles: () => [],
    listFiles: [],
    askPdf: () => undefined,
  };
}
