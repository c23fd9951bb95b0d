/** What a pattern's page shows for picked days or another notebook, in the place of what the build wrote; and that again when nothing else is asked. */

import type { LiveView } from "../lazy/dates/dates-part.ts";
import { makeElement } from "../ui/make-element.ts";
import { partOf, theOne } from "../ui/parts.ts";
import { writeMarks } from "./marks-table.ts";

export interface LivePage {
  /** The title of the notebook that the page was built for. */
  readonly notebook: string;
  /** Shows a view, or what was built; drawing along is its caller's. */
  show(view: LiveView | undefined, isMine: boolean): void;
}

/** Remembers the page as it was built. */
export function openLivePage(page: Document, whole: HTMLElement): LivePage {
  const swap = openSwap(page);
  const showFitting = openFitting(page);
  const showStrip = openStrip(page);
  const plate = theOne(whole, ".plate", HTMLElement);
  const built = {
    drawing: theOne(plate, "svg", SVGSVGElement),
    title: page.title,
    sheet: page.body.className,
    printTitle: partOf(plate, "print-title").textContent,
    isDouble: whole.classList.contains("double"),
  };
  const link = theOne(page, ".lede a", HTMLAnchorElement);
  return {
    notebook: link.textContent ?? "",
    show: (view, isMine) => {
      swap(view !== undefined);
      theOne(plate, "svg", SVGSVGElement).replaceWith(view ? drawingOf(view) : built.drawing);
      partOf(plate, "print-title").textContent = view
        ? `${view.recipe.title} · ${view.notebook.title}`
        : built.printTitle;
      page.title = view ? `${view.recipe.title} on ${view.notebook.title}` : built.title;
      page.body.className = view ? view.sheet : built.sheet;
      whole.classList.toggle("double", view ? view.pages > 1 : built.isDouble);
      showFitting(view);
      showStrip(view);
      if (view) showWords(page, view, notebookLink(page, { view, isMine, link }));
      else clearWords(page);
    },
  };
}

function drawingOf({ svg }: LiveView): SVGSVGElement {
  const place = makeElement("div");
  // The writer escapes every text, so what it writes may be read as markup.
  place.innerHTML = svg;
  return theOne(place, "svg", SVGSVGElement);
}

interface Linked {
  readonly view: LiveView;
  readonly isMine: boolean;
  /** To the page of the notebook that this page was built for. */
  readonly link: HTMLAnchorElement;
}

/** A notebook of the book has a page of its own; every other one has the fit page. */
function notebookLink(page: Document, { view, isMine, link }: Linked): readonly (Node | string)[] {
  const { notebook } = view;
  const href =
    link.textContent === notebook.title
      ? link.getAttribute("href")
      : page.querySelector(".ways .own a")?.getAttribute("href");
  const said = isMine ? "" : view.notebookAddress;
  const named = makeElement("a", { href: `${href ?? ""}${said}` }, notebook.title);
  return isMine ? ["your notebook, ", named] : [named];
}

function showWords(page: Document, view: LiveView, notebook: readonly (Node | string)[]): void {
  const { plan, summary, along, outcome } = view;
  partOf(page, "live-outcome").replaceChildren(
    plan.fits ? "Drawn for " : "It does not fit ",
    ...notebook,
    `. ${outcome}`,
  );
  partOf(page, "live-words").replaceChildren(...summary());
  partOf(page, "live-counting").textContent = along?.counting ?? "";
  const marks = partOf(page, "live-marks");
  writeMarks(marks, along?.marks ?? []);
  const section = marks.closest("section");
  if (section) section.hidden = along === undefined;
}

/** So that no name of a part stands in the page twice when what was built is back. */
function clearWords(page: Document): void {
  for (const part of ["live-outcome", "live-words", "live-marks"])
    partOf(page, part).replaceChildren();
}

/** The parts that belong to a pattern that fits, to one that has splits, or to one that does not fit. */
function openFitting(page: Document): (view?: LiveView) => void {
  const parts = [...page.querySelectorAll<HTMLElement>("[data-fits]")].map((part) => ({
    part,
    wasHidden: part.hidden,
  }));
  return (view) => {
    const isShown = {
      yes: view?.plan.fits ?? false,
      no: !view?.plan.fits,
      divided: view?.plan.fits ? view.plan.pages.some(({ splits }) => splits.length > 0) : false,
    };
    for (const { part, wasHidden } of parts) {
      const [, now] = Object.entries(isShown).find(([name]) => name === part.dataset.fits) ?? [];
      part.hidden = view ? !now : wasHidden;
    }
  };
}

function openStrip(page: Document): (view?: LiveView) => void {
  const picture = theOne(page, 'img[data-part="strip-picture"]', HTMLImageElement);
  const [savings, leftOut] = [partOf(page, "savings"), partOf(page, "live-left-out")];
  const read = (name: string) => picture.getAttribute(name) ?? "";
  const built = { src: read("src"), width: read("width"), height: read("height"), leftOut: [] };
  const builtSavings = savings.textContent;
  let isBuilt = true;
  return (view) => {
    if (!view && isBuilt) return;
    isBuilt = !view;
    const strip = view?.strip() ?? built;
    for (const name of ["width", "height", "src"] as const)
      picture.setAttribute(name, `${strip[name]}`);
    savings.textContent = view ? (view.along?.savings ?? "") : builtSavings;
    leftOut.replaceChildren(...strip.leftOut.map((words) => makeElement("li", {}, words)));
    leftOut.hidden = strip.leftOut.length === 0;
  };
}

/** What was built is taken out of the page while it does not hold, so that nothing stands in it twice. */
function openSwap(page: Document): (isLive: boolean) => void {
  const built = [...page.querySelectorAll("[data-built]")].map((element) => ({
    element,
    place: page.createComment(""),
  }));
  const live = [...page.querySelectorAll<HTMLElement>("[data-live]")];
  return (isLive) => {
    for (const { element, place } of built) {
      if (isLive) element.replaceWith(place);
      else place.replaceWith(element);
    }
    for (const element of live) element.hidden = !isLive;
  };
}
