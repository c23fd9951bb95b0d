/** Makes one PDF file of a book. */
import { cardScene } from "../../../draw/card/card-scene.ts";
import type { FontLists } from "../../../print/pdf/font/print-font.ts";
import { misfitPdf } from "../../../print/pdf/misfit-pdf.ts";
import {
  bookPdf,
  type PrintSettings,
  pagePdf,
  scenePdf,
  setupPdf,
  stripPdf,
} from "../../../print/pdf/pdf-files.ts";
import { PURPOSES } from "../../../recipe/recipe.ts";
import { setupStrip } from "../../../setup/setup-strip.ts";
import { PURPOSE_WORDS } from "../../../view/pattern/purpose-words.ts";
import { openPlanner, type Planner } from "../../../view/planner.ts";
import type { Content } from "../../content/load-content.ts";
import { setupEvents } from "../make/setup-events.ts";
import type { PdfFile } from "./pdf-file.ts";
import { openPrintedPlans, type PrintedPlans } from "./printed-plans.ts";

const LANGUAGE = "en";

/** The paper of a notebook's book; the pages of larger notebooks are printed on their own. */
const BOOK_PAPER = "A4";

/** What the files of one content are made with. */
export interface PdfContext {
  readonly content: Content;
  readonly planner: Planner;
  readonly plans: PrintedPlans;
}

/** Nothing is planned at first. */
export function openPdfContext(content: Content): PdfContext {
  const planner = openPlanner(content);
  return { content, planner, plans: openPrintedPlans(planner.planOf) };
}

/** The bytes: the same for the same content. */
export function makePdf(file: PdfFile, context: PdfContext, fonts: FontLists): Promise<Uint8Array> {
  const { planner, content } = context;
  const { printer } = content.book;
  const settings = { fonts, language: LANGUAGE, ...(printer ? { printer } : {}) };
  switch (file.kind) {
    case "page":
      return patternPdf(file, context, settings);
    case "strip": {
      const strip = planner.stripOn(file.strip, file.notebook);
      const title = `${strip.title} · ${strip.notebook.title}`;
      return stripPdf({ title, strips: [strip], paper: file.paper }, settings);
    }
    case "card":
      return scenePdf(cardScene(planner.stripOn(file.strip, file.notebook)), settings);
    case "setup-pages": {
      const notebook = planner.notebook(file.notebook);
      const setup = planner.setupOn(file.setup, file.notebook);
      return setupPdf({ setup, notebook, events: setupEvents(file.setup, content) }, settings);
    }
    case "setup-strip": {
      const setup = planner.setupOn(file.setup, file.notebook);
      const strip = setupStrip(setup, planner.notebook(file.notebook));
      const title = `${strip.title} · ${strip.notebook.title}`;
      return stripPdf({ title, strips: [strip], paper: "A4" }, settings);
    }
    case "book":
      return notebookPdf(file.notebook, context, settings);
  }
}

function patternPdf(
  { pattern, notebook: slug }: { readonly pattern: string; readonly notebook: string },
  { planner, plans }: PdfContext,
  settings: PrintSettings,
): Promise<Uint8Array> {
  const notebook = planner.notebook(slug);
  const plan = plans.plan(pattern, slug);
  const { recipe } = plan;
  return plan.fits
    ? pagePdf({ plan, recipe, notebook }, settings)
    : misfitPdf({ plan, recipe, notebook }, settings);
}

function notebookPdf(
  slug: string,
  context: PdfContext,
  settings: PrintSettings,
): Promise<Uint8Array> {
  const { planner, plans, content } = context;
  const groups = PURPOSES.map((purpose) => ({
    title: PURPOSE_WORDS[purpose].title,
    entries: content.recipes
      .filter((recipe) => recipe.purpose === purpose)
      .map(({ slug: pattern, title }) => ({
        title,
        pages: plans.pageCount(pattern, slug),
        plan: () => plans.plan(pattern, slug),
      })),
  })).filter(({ entries }) => entries.length > 0);
  const notebook = planner.notebook(slug);
  const { title } = content.book;
  return bookPdf({ title, notebook, groups, paper: BOOK_PAPER }, settings);
}
