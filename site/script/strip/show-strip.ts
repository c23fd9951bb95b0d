/** The strip in true size, what each side carries and had to leave out, and its data. */
import { cardScene } from "../../../src/draw/card/card-scene.ts";
import { finishedSize, stripNotes } from "../../../src/draw/strip/strip-body.ts";
import { stripScene } from "../../../src/draw/strip/strip-scene.ts";
import { sayLeftOut, sayStripNote } from "../../../src/issue/words/say-strip-note.ts";
import { sayDaysNote } from "../../../src/issue/words/strip-words.ts";
import { stripSheets } from "../../../src/print/sheets/strip-sheets.ts";
import type { Strip, StripSide } from "../../../src/strip/strip.ts";
import { stripJsonText } from "../../../src/strip/strip-json.ts";
import { writeStripAddress } from "../../../src/view/address/strip-address.ts";
import { laneChoiceWords } from "../../../src/view/strip/strip-side-view.ts";
import type { Queue } from "../ui/idle-queue.ts";
import { makeElement } from "../ui/make-element.ts";
import type { Printer } from "../ui/paper-page.ts";
import { partOf, theOne } from "../ui/parts.ts";
import type { Draw } from "../ui/show-drawing.ts";
import { stripTitle } from "../ui/strip-print-out.ts";
import { isBare, type StripState, type StripStore } from "./strip-store.ts";

interface Shows {
  readonly draw: Draw;
  readonly queue: Queue;
  readonly printer: () => Printer;
}

/** Follows the store: the data at once, the drawing and the words when there is time. */
export function bindStrip(
  page: ParentNode,
  store: StripStore,
  { draw, queue, printer }: Shows,
): void {
  const [place, empty] = [partOf(page, "strip"), partOf(page, "empty")];
  const data = theOne(page, "#strip-data", HTMLScriptElement);
  const [byHand, card] = [
    theOne(page, "details.by-hand", HTMLDetailsElement),
    partOf(page, "card"),
  ];
  const showCard = () => {
    if (byHand.open) draw.show(card, cardScene(store.state().strip));
  };
  byHand.addEventListener("toggle", showCard);
  let last: unknown;
  store.subscribe((state) => {
    const { carried, fields } = state.errors;
    place.classList.toggle("stale", carried.length + fields.length > 0);
    if (state.strip === last) return;
    last = state.strip;
    data.textContent = isBare(state) ? "null" : stripJsonText(state.strip);
    empty.hidden = !isBare(state);
    showFor(page, state);
    queue.put("strip", () => {
      const { strip } = store.state();
      draw.show(place, stripScene(strip));
      for (const side of strip.sides) showSide(page, side, strip);
      showNotes(page, store.state(), printer());
      showCard();
      return false;
    });
  });
}

/** Whose notebook it is for, and where that is changed. */
function showFor(page: ParentNode, { asked, notebook }: StripState): void {
  const link = theOne(page, '[data-part="for"]', HTMLAnchorElement);
  link.textContent = notebook.title;
  link.hash = writeStripAddress({ notebook: asked.notebook });
}

function showSide(page: ParentNode, side: StripSide, strip: Strip): void {
  const place = theOne(page, `[data-side="${side.axis}"]`, HTMLElement);
  const leftOut = partOf(place, "left-out");
  const choice = partOf(place, "choice");
  const said = laneChoiceWords(side, strip.patterns).join(" ");
  if (choice.textContent !== said) choice.textContent = said;
  leftOut.hidden = side.leftOut.length === 0;
  theOne(leftOut, "ul", HTMLUListElement).replaceChildren(
    ...side.leftOut.map((fact) => {
      const title = strip.patterns.find(({ slug }) => slug === fact.pattern)?.title ?? fact.pattern;
      return makeElement("li", {}, makeElement("b", {}, title), `: ${sayLeftOut(fact)}`);
    }),
  );
}

/** How large it is, and what there is to know before cutting. */
function showNotes(page: ParentNode, state: StripState, { paper, correction }: Printer): void {
  const { strip } = state;
  const { length, width } = finishedSize(strip);
  const title = stripTitle(strip);
  const sheets = stripSheets({ title, strips: [strip], paper, printer: correction });
  const largest = strip.patterns.flatMap((one) => (one.isLargest ? [one.title] : []));
  const notes = [
    ...sayDaysNote(largest, strip.dates),
    ...[...stripNotes(strip), ...sheets.notes].map(sayStripNote),
  ];
  partOf(page, "size").textContent = `, ${Math.round(length)} × ${Math.round(width)} mm`;
  partOf(page, "notes").replaceChildren(...notes.map((note) => makeElement("li", {}, note)));
}
