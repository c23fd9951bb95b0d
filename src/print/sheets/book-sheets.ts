/** A notebook's whole book on paper: the contents, and then every pattern that fits, each page in true size. */
import type { Rect } from "../../draw/geometry/rect.ts";
import { toMm } from "../../measure/length.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import { type PaperSize, paperSize } from "../../notebook/paper.ts";
import type { Plan } from "../../plan/plan.ts";
import type { Recipe } from "../../recipe/recipe.ts";
import { NO_STRETCH, type PrinterCorrection } from "../printer-correction.ts";
import type { ContentsRow } from "./contents-flow.ts";
import { contentsSheets } from "./contents-sheets.ts";
import type { Drawings } from "./drawing-cache.ts";
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
  /** For who prints the same plans elsewhere, too. */
  readonly drawings?: Drawings;
}

interface BookGroup {
  readonly title: string;
  readonly entries: readonly BookEntry[];
}

/** A pattern and its plan for the notebook. */
interface BookEntry {
  readonly recipe: Recipe;
  readonly plan: Plan;
}

export interface BookSheets {
  readonly sheets: readonly Sheet[];
  readonly bookmarks: readonly Bookmark[];
}

/** The sheets, the contents first, and what a reader lists beside them. */
export function bookSheets(question: BookQuestion): BookSheets {
  const {
    groups,
    notebook,
    title,
    margin = SAFE_MARGIN,
    printer = NO_STRETCH,
    drawings,
  } = question;
  const { paper, area, isFramed } = bookPaper(question, margin, printer);
  const draw = (entry: BookEntry): DrawnPattern => {
    const { recipe, plan } = entry;
    if (!plan.fits) return { ...entry, sheets: [] };
    const pages = { recipe, plan, notebook, ...(drawings && { drawings }) };
    if (!isFramed) return { ...entry, sheets: pageSheets(pages) };
    const scenes = pageScenes(pages, "counts");
    const sheets = scenes.map((scene, index) => {
      const side = plan.pages[index]?.side ?? "single";
      const beside = [...(side === "single" ? [] : [`${side} page`]), notebook.title].join(" · ");
      return framedSheet({ scene, title: recipe.title, beside, paper, area });
    });
    return { ...entry, sheets };
  };
  const drawn = groups.map((group) => ({ title: group.title, entries: group.entries.map(draw) }));
  const rows = contentsRows(drawn);
  const contents = contentsSheets({ title, subtitle: notebook.title, rows, paper, area });
  const pages = drawn.flatMap(({ entries }) => entries.flatMap(({ sheets }) => sheets));
  return {
    sheets: [...contents, ...pages].map((sheet, index) =>
      isFramed || index < contents.length ? withNumber(sheet, area, index + 1) : sheet,
    ),
    bookmarks: [{ title, page: 0 }, ...bookmarksOf(rows, contents.length)],
  };
}

interface DrawnPattern extends BookEntry {
  readonly sheets: readonly Sheet[];
}

interface BookPaper {
  readonly paper: PaperSize;
  readonly area: Rect;
  /** Do pages lie on larger paper, with their counts? */
  readonly isFramed: boolean;
}

/** The printer's paper if a page of the notebook has room on it with its counts, else the notebook's own. */
function bookPaper(
  question: BookQuestion,
  margin: PrinterMargin,
  printer: PrinterCorrection,
): BookPaper {
  const { notebook, groups, drawings } = question;
  const paper = paperSize(question.paper);
  const area = safeArea(paper, margin, printer);
  const scenes = groups
    .flatMap(({ entries }) => entries)
    .flatMap(({ recipe, plan }) => (plan.fits ? [{ recipe, plan, notebook }] : []))
    .slice(0, 1)
    .flatMap((first) => pageScenes({ ...first, ...(drawings && { drawings }) }, "counts"));
  if (scenes.every((scene) => hasFrameRoom(scene, area))) return { paper, area, isFramed: true };
  const { across, down } = notebook.axes;
  const own = { width: toMm(across.paper), height: toMm(down.paper) };
  return { paper: own, area: safeArea(own, margin, printer), isFramed: false };
}

interface DrawnGroup {
  readonly title: string;
  readonly entries: readonly DrawnPattern[];
}

function contentsRows(groups: readonly DrawnGroup[]): readonly ContentsRow[] {
  let page = 0;
  return groups.flatMap(({ title, entries }): readonly ContentsRow[] => [
    { kind: "group", title },
    ...entries.map(({ recipe, sheets }): ContentsRow => {
      if (sheets.length === 0) return { kind: "misfit", title: recipe.title };
      const row = { kind: "pattern", title: recipe.title, page } as const;
      page += sheets.length;
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
