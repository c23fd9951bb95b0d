/** The pages of a set-up two by two, as the book's own set-up pages have them. */
import type { PageView, SpreadView } from "../../../src/view/setup/setup-view.ts";
import { makeElement } from "../ui/make-element.ts";

interface Drawn {
  /** Of the notebook's paper, in millimetres. */
  readonly paper: { readonly width: number; readonly height: number };
  /** Where the page's layout is shown for its days; nothing where it has no page. */
  readonly linkOf: (page: PageView) => string | undefined;
}

/** One opening of the notebook; pictures are empty until they are drawn. */
export function spreadElement({ left, right }: SpreadView, drawn: Drawn): HTMLElement {
  const only = left ? (right ? "" : " left-only") : " right-only";
  const pages = [left, right].flatMap((page) => (page ? [facing(page, drawn)] : []));
  return makeElement("li", { class: `open${only}` }, ...pages);
}

function facing(page: PageView, { paper, linkOf }: Drawn): HTMLElement {
  const { number, side, title, dates, picture } = page;
  const href = linkOf(page);
  const name = title
    ? href
      ? makeElement("a", { href }, title)
      : title
    : makeElement("span", { class: "quiet" }, "stays free");
  const days = dates ? [" ", makeElement("small", {}, dates)] : [];
  return makeElement(
    "div",
    { class: `facing at-${side}` },
    pictureElement(paper, picture),
    makeElement(
      "p",
      {},
      makeElement("b", { class: "numbers" }, `${number}`),
      " ",
      makeElement("span", { class: "what" }, name, ...days),
    ),
  );
}

const SVG = "http://www.w3.org/2000/svg";

/** A picture that refers to one that is drawn elsewhere, as soon as it is; one of a page that stays free is bare. */
function pictureElement(
  { width, height }: Drawn["paper"],
  picture: string | undefined,
): SVGSVGElement {
  const svg = document.createElementNS(SVG, "svg");
  svg.setAttribute("class", picture ? "drawing" : "drawing free");
  svg.setAttribute("viewBox", `0 0 ${width} ${height}`);
  svg.setAttribute("aria-hidden", "true");
  if (!picture) return svg;
  const use = document.createElementNS(SVG, "use");
  use.setAttribute("href", `#${picture}`);
  use.setAttribute("width", `${width}`);
  use.setAttribute("height", `${height}`);
  svg.dataset.picture = picture;
  svg.append(use);
  return svg;
}
