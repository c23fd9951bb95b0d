/** Prints the recipe's page and its strip, and makes PDF files of them, as the book's own pages do. */
import type { Strip } from "../../../src/strip/strip.ts";
import { spanFileName, titledRecipe } from "../../../src/view/pattern/span-words.ts";
import { pagePrintOut } from "../app/print.ts";
import { printPart } from "../lazy/print/print-part.ts";
import { type SingleStripPart, singleStripPart } from "../lazy/single-strip/single-strip-part.ts";
import type { Printer } from "../ui/paper-page.ts";
import { onPress } from "../ui/parts.ts";
import { openPrinting } from "../ui/print-drawings.ts";
import { saveFile } from "../ui/save-file.ts";
import type { Draw } from "../ui/show-drawing.ts";
import { whileBusy } from "../ui/while-busy.ts";
import type { RecipeResult } from "./plan-recipe.ts";
import type { RecipeStore } from "./recipe-store.ts";

interface Printing {
  readonly draw: Draw;
  readonly printer: () => Printer;
  readonly load: (name: string) => Promise<void>;
  readonly say: (words: string) => void;
}

type Planned = Extract<RecipeResult, { ok: true }>;
type Fitting = Planned & { readonly plan: { readonly fits: true } };

/** Only what can be read and fits is printed. */
export function bindRecipePrinting(page: Document, store: RecipeStore, printing: Printing): void {
  const { draw, printer, say, load } = printing;
  const print = openPrinting(window, () => usualPrintOut(store, printing));
  const press = (doing: string, act: (result: Fitting, button: HTMLElement) => void) =>
    onPress(page, doing, (button) => {
      const { result } = store.state();
      if (!result.ok) say("The recipe has problems: see the list below it.");
      else if (!isFitting(result)) say("The pattern does not fit this notebook.");
      else act(titled(result), button);
    });
  const name = recipeFileName;
  press("print-page", (result) => print(pagePrintOut(result, printer(), draw)));
  const pressStrip = (
    doing: string,
    act: (strip: Strip, part: SingleStripPart, name: string) => Promise<void> | void,
  ) =>
    press(doing, (result, button) => {
      void whileBusy(button, say, async () => {
        const part = await singleStripPart(window, load);
        await act(stripOf(result, part), part, `${name(result)}-strip`);
      });
    });
  press("print-strip", (result) => {
    singleStripPart(window, load).then(
      (part) => print(part.stripPrintOut(stripOf(result, part), printer(), draw)),
      () => say("The strip could not be made: a part of this page is missing."),
    );
  });
  pressStrip("save-strip-svg", (strip, part, file) =>
    saveFile(file, "svg", draw.file(part.stripScene(strip))),
  );
  press("save-page-pdf", (result, button) => {
    const make = (part: PrintPart) => part.pagePdf(result, printer().correction);
    savePdf(name(result), make, { button, ...printing });
  });
  pressStrip("save-strip-pdf", async (strip, { stripTitle }, file) => {
    const { paper, correction } = printer();
    const part = await printPart(window, load);
    const question = { title: stripTitle(strip), strips: [strip], paper };
    saveFile(file, "pdf", new Uint8Array(await part.stripPdf(question, correction)));
  });
}

type PrintPart = Awaited<ReturnType<typeof printPart>>;

/** The browser's own command prints the page's drawing, and nothing of it while the recipe is wrong. */
function usualPrintOut(store: RecipeStore, { draw, printer }: Printing) {
  const { result } = store.state();
  return result.ok ? pagePrintOut(titled(result), printer(), draw) : { sheet: "", pages: [] };
}

/** What is printed has its days in its title. */
function titled<Result extends Planned>(result: Result): Result {
  return { ...result, recipe: titledRecipe(result) };
}

/** Of its files, without an ending. */
export function recipeFileName({ recipe, notebook, when: { span } }: Planned): string {
  return `${recipe.slug}-${notebook.slug}${span ? `-${spanFileName(span)}` : ""}`;
}

function isFitting(result: Planned): result is Fitting {
  return result.plan.fits;
}

/** The strip of this recipe alone, as each pattern of the book has one. */
function stripOf({ recipe, notebook, plan }: Planned, part: SingleStripPart): Strip {
  return part.buildSingleStrip(recipe, notebook, plan);
}

function savePdf(
  name: string,
  make: (part: PrintPart) => Promise<Uint8Array>,
  { button, load, say }: Printing & { readonly button: HTMLElement },
): void {
  void whileBusy(button, say, async () => {
    const pdf = await make(await printPart(window, load));
    saveFile(name, "pdf", new Uint8Array(pdf));
  });
}
