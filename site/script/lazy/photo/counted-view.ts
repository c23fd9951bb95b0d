/** What is shown of a counted photo: the marks, the paper's corners, what they tell, and what can be done with it. */
import type { Said } from "../../../../src/issue/words/said.ts";
import {
  sayCountedGrid,
  sayLinedPage,
  sayMeasuredGrid,
  sayMeasuredLines,
  sayPhotoDoubt,
  sayUnmeasured,
} from "../../../../src/issue/words/say-photo.ts";
import { isPaperName, PAPERS } from "../../../../src/notebook/paper.ts";
import { measureLines } from "../../../../src/photo/measure-lines.ts";
import {
  measureGrid,
  type PaperCorners,
  type PaperSize,
} from "../../../../src/photo/measure-paper.ts";
import type { CountedGrid, LinedPage, PhotoCount } from "../../../../src/photo/photo-count.ts";
import { typedLength } from "../../../../src/view/fields/typed-length.ts";
import { linedFields, photoFields } from "../../../../src/view/photo/photo-numbers.ts";
import { fieldOf, fillForm } from "../../ui/form.ts";
import { makeElement } from "../../ui/make-element.ts";
import type { Counted } from "../photo-count/photo-count-part.ts";
import { cornerHandles } from "./corner-handles.ts";
import { markDots } from "./mark-dots.ts";
import type { PhotoWork } from "./photo-part.ts";

/** The elements for what came of a photo; a refused one has its reason and what was seen. */
export function countedView(
  { form, say }: Omit<PhotoWork, "place">,
  canvas: HTMLCanvasElement,
  { count, corners }: Counted,
): readonly HTMLElement[] {
  markDots(canvas, count);
  canvas.setAttribute("role", "img");
  canvas.setAttribute("aria-label", `The photo, with ${marked(count)} marked on it`);
  const shown = makeElement("div", { class: "photo-shown" }, canvas);
  if (!count.ok || !corners) {
    const said = count.ok ? undefined : sayPhotoDoubt(count.doubt);
    const words = said ? `${said.sentence} ${said.hint}` : "";
    return [makeElement("p", { class: "fault", tabindex: "-1" }, words), shown];
  }
  const found = count.of === "grid" ? ofGrid(count.grid) : ofLines(count.page, canvas);
  const words = makeElement("p", { tabindex: "-1" }, found.words);
  return [words, shown, ...measuring({ form, say }, { found, corners, canvas, shown })];
}

function marked(count: PhotoCount): string {
  if (!count.ok) return `${count.found.length} dots`;
  return count.of === "grid"
    ? `${count.grid.dots.length} dots`
    : `${count.page.lines.length} lines`;
}

type Fields = Readonly<Record<string, string>>;

/** What was counted, and what the paper's corners tell of it. */
interface Found {
  readonly words: string;
  /** Without the paper's corners. */
  readonly fields: Fields;
  readonly filled: string;
  measure(corners: PaperCorners, paper: PaperSize): Lengths | Said;
}

interface Lengths {
  readonly words: string;
  readonly fields: Fields;
}

function ofGrid(grid: CountedGrid): Found {
  return {
    words: sayCountedGrid(grid),
    fields: photoFields(grid),
    filled: `${grid.across} dots across and ${grid.down} down are filled in.`,
    measure: (corners, paper) => {
      const result = measureGrid(grid, corners, paper);
      if (!result.ok) return sayUnmeasured(result.kind);
      const words = sayMeasuredGrid(result.grid);
      return { words, fields: photoFields(grid, { ...result.grid, paper }) };
    },
  };
}

function ofLines(page: LinedPage, photo: HTMLCanvasElement): Found {
  return {
    words: sayLinedPage(page),
    fields: linedFields(page),
    filled: `${page.lines.length} lines down are filled in.`,
    measure: (corners, paper) => {
      const result = measureLines(page, photo, corners, paper);
      if (!result.ok) return sayUnmeasured(result.kind);
      const words = sayMeasuredLines(result.lines);
      return { words, fields: linedFields(page, { ...result.lines, paper }) };
    },
  };
}

interface Measured {
  readonly found: Found;
  readonly corners: PaperCorners;
  readonly canvas: HTMLCanvasElement;
  readonly shown: HTMLElement;
}

/** The paper's corners, and the buttons. Lengths are only told once somebody has looked at the corners. */
function measuring(
  { form, say }: Omit<PhotoWork, "place">,
  { found, corners, canvas, shown }: Measured,
): readonly HTMLElement[] {
  const told = makeElement("p", { "aria-live": "polite" });
  const agreed = makeElement("input", { type: "checkbox", name: "corners" });
  const measured = () =>
    agreed.checked ? measuredBy(found, handles.corners(), paperOf(form)) : WITHOUT_CORNERS;
  const show = () => {
    const result = measured();
    const words = typeof result === "string" ? result : result.words;
    if (told.textContent !== words) told.textContent = words;
  };
  const handles = cornerHandles(corners, canvas, show);
  shown.append(...handles.elements);
  agreed.addEventListener("change", show);
  // The paper may be chosen at any time; once another photo is shown, nobody listens for this one.
  const follow = () => (told.isConnected ? show() : form.removeEventListener("input", follow));
  form.addEventListener("input", follow);
  show();
  const use = makeElement(
    "button",
    { type: "button", "data-do": "use-photo" },
    "Use these numbers",
  );
  use.addEventListener("click", () => {
    const result = measured();
    fillForm(form, typeof result === "string" ? found.fields : result.fields);
    form.dispatchEvent(new Event("input", { bubbles: true }));
    say(found.filled);
  });
  const label = "The four marks lie on the corners of the paper";
  return [
    makeElement("label", {}, agreed, ` ${label}`),
    told,
    makeElement("div", { class: "doing" }, use),
  ];
}

/** The lengths, or why there are none. */
function measuredBy(
  found: Found,
  corners: PaperCorners,
  paper: PaperSize | undefined,
): Lengths | string {
  if (!paper) return NO_PAPER;
  const result = found.measure(corners, paper);
  return "words" in result ? result : `${result.sentence} ${result.hint}`;
}

const WITHOUT_CORNERS =
  "For the lengths, choose the paper above, and put the four marks onto the corners of the page.";
const NO_PAPER = "The size of the paper is missing above: it tells the lengths.";

/** In mm, as the page's own field says. */
function paperOf(form: HTMLFormElement): PaperSize | undefined {
  const name = fieldOf(form, "paper").value;
  if (isPaperName(name)) {
    const [width, height] = PAPERS[name];
    return { width, height };
  }
  const [width, height] = [fieldOf(form, "width"), fieldOf(form, "height")].map(({ value }) =>
    typedLength(value),
  );
  if (width?.kind !== "length" || height?.kind !== "length") return undefined;
  return width.mm > 0 && height.mm > 0 ? { width: width.mm, height: height.mm } : undefined;
}
