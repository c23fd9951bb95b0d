/** A notebook's whole book on paper: the contents, and then every pattern that fits, each page in true size. */
import type { Rect } from "../../draw/geometry/rect.ts";
import { sayPageSide } from "../../issue/words/sheet-words.ts";
import { toMm } from "../../measure/length.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import { type PaperSize, paperSize } from "../../notebook/paper.ts";
import type { Plan } from "../../plan/plan.ts";
import { NO_STRETCH, type PrinterCorrection } from "../printer-correction.ts";
import type { ContentsRow } from "./contents-flow.ts";
import { contentsSheets } from "./contents-sheets.ts";
import { framedSheet, hasFrameRoom, withNumber } from "./page-frame.ts";
import { pageScenes, pageSheets } from "./page-sheets.ts";
import { type PrinterMargin, type PrinterPaper, SAFE_MARGIN, safeArea } from "./printer-paper.ts";
import type { Bookmark, Sheet } from "./sheet.ts";

export interface BookQuestion {
  readonly title: string;
  readonly notebook: Notebook;
  /** In the order of the book, such as by purpose. */
  readonly groups: readonly BookGroup[];
  /** What the keeper's printer takes; larger notebooks are printed on their own paper. */
  readonly paper: PrinterPaper;
  readonly margin?: PrinterMargin;
  readonly printer?: PrinterCorrection;
}

interface BookGroup {
  readonly title: string;
  readonly entries: readonly BookEntry[];
}

/** A pattern on the notebook. */
interface BookEntry {
  readonly title: string;
  /** Of so many pages; 0 where it does not fit. */
  readonly pages: number;
  /** Asked for when its pages are drawn: the plans of a large book are more than memory should hold at once. */
  readonly plan: () => Plan;
}

export interface BookSheets {
  /** Each is drawn when it is its turn. */
  readonly sheets: Iterable<Sheet>;
  readonly bookmarks: readonly Bookmark[];
}

/** The sheets, the contents first, and what a reader lists beside them. */
export function bookSheets(question: BookQuestion): BookSheets {
  const { groups, notebook, title, margin = SAFE_MARGIN, printer = NO_STRETCH } = question;
  const bookPaper = paperOf(question, margin, printer);
  const { paper, area } = bookPaper;
  const rows = contentsRows(groups);
  const contents = contentsSheets({ title, subtitle: notebook.title, rows, paper, area });
  return {
    sheets: sheetsOf(question, bookPaper, contents),
    bookmarks: [{ title, page: 0 }, ...bookmarksOf(rows, contents.length)],
  };
}

function* sheetsOf(
  { groups, notebook }: BookQuestion,
  bookPaper: BookPaper,
  contents: readonly Sheet[],
): Iterable<Sheet> {
  const { area, isFramed } = bookPaper;
  let number = 0;
  for (const sheet of contents) {
    number += 1;
    yield withNumber(sheet, area, number);
  }
  for (const entry of groups.flatMap(({ entries }) => entries)) {
    for (const sheet of patternSheets(entry, notebook, bookPaper)) {
      number += 1;
      yield isFramed ? withNumber(sheet, area, number) : sheet;
    }
  }
}

function patternSheets(
  { pages, plan: planOf }: BookEntry,
  notebook: Notebook,
  { paper, area, isFramed }: BookPaper,
): readonly Sheet[] {
  if (pages === 0) return [];
  const plan = planOf();
  if (!plan.fits) return [];
  const { recipe } = plan;
  const question = { recipe, plan, notebook };
  if (!isFramed) return pageSheets(question);
  return pageScenes(question, "counts").map((scene, index) => {
    const side = plan.pages[index]?.side ?? "single";
    const beside = [...(side === "single" ? [] : [sayPageSide(side)]), notebook.title].join(" · ");
    return framedSheet({ scene, title: recipe.title, beside, paper, area });
  });
}

interface BookPaper {
  readonly paper: PaperSize;
  readonly area: Rect;
  /** Do pages lie on larger paper, with their counts? */
  readonly isFramed: boolean;
}

/** The printer's paper if a page of the notebook has room on it with its counts, else the notebook's own. */
function paperOf(
  question: BookQuestion,
  margin: PrinterMargin,
  printer: PrinterCorrection,
): BookPaper {
  const { notebook, groups } = question;
  const paper = paperSize(question.paper);
  const area = safeArea(paper, margin, printer);
  const scenes = groups
    .flatMap(({ entries }) => entries.filter(({ pages }) => pages > 0))
    .slice(0, 1)
    .map(({ plan }) => plan())
    .flatMap((plan) => (plan.fits ? [{ plan, recipe: plan.recipe, notebook }] : []))
    .flatMap((first) => pageScenes(first, "counts"));
  if (scenes.every((scene) => hasFrameRoom(scene, area))) return { paper, area, isFramed: true };
  const { across, down } = notebook.axes;
  const own = { width: toMm(across.paper), height: toMm(down.paper) };
  return { paper: own, area: safeArea(own, margin, printer), isFramed: false };
}

function contentsRows(groups: readonly BookGroup[]): readonly ContentsRow[] {
  let page = 0;
  return groups.flatMap(({ title, entries }): readonly ContentsRow[] => [
    { kind: "group", title },
    ...entries.map(({ title: name, pages }): ContentsRow => {
      if (pages === 0) return { kind: "misfit", title: name };
      const row = { kind: "pattern", title: name, page } as const;
      page += pages;
      return row;
    }),
  ]);
}

/** A group's bookmark leads to its first pattern; a group of which nothing fits has none. */
function bookmarksOf(rows: readonly ContentsRow[], first: number): readonly Bookmark[] {
  const marks: { title: string; page: number; children: Bookmark[] }[] = [];
  let group = "";
  for (const row of rows) {
    if (row.kind === "group") group = row.title;
    if (row.kind !== "pattern") continue;
    const page = first + row.page;
    if (marks.at(-1)?.title !== group) marks.push({ title: group, page, children: [] });
    marks.at(-1)?.children.push({ title: row.title, page });
  }
  return marks;
}
