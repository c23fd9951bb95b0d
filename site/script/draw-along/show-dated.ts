/** What a pattern's page shows for picked days, in the place of what the build wrote; and that again when none are picked. */

import type { DatedView } from "../lazy/dates/dates-part.ts";
import { makeElement } from "../ui/make-element.ts";
import { partOf, theOne } from "../ui/parts.ts";
import { writeMarks } from "./marks-table.ts";

/** Shows a view, or what was built; the drawing along is its caller's. */
export function openDatedPage(page: Document, whole: HTMLElement): (view?: DatedView) => void {
  const swap = openSwap(page);
  const plate = theOne(whole, ".plate", HTMLElement);
  const built = {
    drawing: theOne(plate, "svg", SVGSVGElement),
    title: page.title,
    sheet: page.body.className,
    printTitle: partOf(plate, "print-title").textContent,
    isDouble: whole.classList.contains("double"),
    strip: page.querySelector('[data-part="strip-picture"]')?.getAttribute("src") ?? "",
  };
  const link = page.querySelector(".lede a");
  const strip = page.querySelector('[data-part="strip-picture"]');
  return (view) => {
    swap(view !== undefined);
    showDrawing(plate, view ? drawingOf(view) : built.drawing);
    partOf(plate, "print-title").textContent = view
      ? `${view.recipe.title} · ${view.notebook.title}`
      : built.printTitle;
    page.title = view ? `${view.recipe.title} on ${view.notebook.title}` : built.title;
    page.body.className = view ? view.sheet : built.sheet;
    strip?.setAttribute(
      "src",
      view?.plan.fits ? `data:image/svg+xml,${encodeURIComponent(view.stripFile())}` : built.strip,
    );
    const isDouble = view?.plan.fits ? view.plan.pages.length > 1 : built.isDouble;
    whole.classList.toggle("double", isDouble);
    if (view) showWords(page, view, link);
    else clearWords(page);
  };
}

function drawingOf({ svg }: DatedView): SVGSVGElement {
  const place = makeElement("div");
  // The writer escapes every text, so what it writes may be read as markup.
  place.innerHTML = svg;
  return theOne(place, "svg", SVGSVGElement);
}

function showDrawing(plate: HTMLElement, drawing: SVGSVGElement): void {
  theOne(plate, "svg", SVGSVGElement).replaceWith(drawing);
}

function showWords(page: Document, view: DatedView, link: Element | null): void {
  const { plan, summary, along, outcome } = view;
  const notebook = link?.cloneNode(true) ?? view.notebook.title;
  partOf(page, "dated-outcome").replaceChildren(
    plan.fits ? "Drawn for " : "It does not fit ",
    notebook,
    `. ${outcome}`,
  );
  partOf(page, "dated-words").replaceChildren(...summary());
  const marks = partOf(page, "dated-marks");
  writeMarks(marks, along?.marks ?? []);
  const section = marks.closest("section");
  if (section) section.hidden = along === undefined;
}

/** So that no name of a part stands in the page twice when what was built is back. */
function clearWords(page: Document): void {
  for (const part of ["dated-outcome", "dated-words", "dated-marks"])
    partOf(page, part).replaceChildren();
}

/** What was built is taken out of the page while it does not hold, so that nothing stands in it twice. */
function openSwap(page: Document): (isDated: boolean) => void {
  const built = [...page.querySelectorAll("[data-built]")].map((element) => ({
    element,
    place: page.createComment(""),
  }));
  const dated = [...page.querySelectorAll<HTMLElement>("[data-dated]")];
  return (isDated) => {
    for (const { element, place } of built) {
      if (isDated) element.replaceWith(place);
      else place.replaceWith(element);
    }
    for (const element of dated) element.hidden = !isDated;
  };
}
