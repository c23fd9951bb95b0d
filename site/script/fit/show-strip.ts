/** The strip of the chosen patterns in true size, what it had to leave out, and its data. */
import { stripScene } from "../../../src/draw/strip/strip-scene.ts";
import { sayLeftOut } from "../../../src/issue/words/say-strip-note.ts";
import { AXES } from "../../../src/measure/axis.ts";
import { stripJsonText } from "../../../src/strip/strip-json.ts";
import type { Queue } from "../ui/idle-queue.ts";
import { makeElement } from "../ui/make-element.ts";
import { partOf, theOne } from "../ui/parts.ts";
import type { Draw } from "../ui/show-drawing.ts";
import type { FitPageState, FitStore } from "./fit-store.ts";

interface Shows {
  readonly draw: Draw;
  readonly queue: Queue;
}

/** Follows the store: the data at once, the drawing when there is time. */
export function bindStrip(page: ParentNode, store: FitStore, { draw, queue }: Shows): void {
  const [words, place] = [partOf(page, "strip-words"), partOf(page, "strip")];
  const leftOut = partOf(page, "left-out");
  const data = theOne(page, "#strip-data", HTMLScriptElement);
  let last: unknown;
  store.subscribe((state) => {
    const { notebook, strip } = state.errors;
    place.classList.toggle("stale", notebook.length + strip.length > 0);
    if (state.strip === last) return;
    last = state.strip;
    data.textContent = stripJsonText(state.strip);
    queue.put("strip", () => {
      words.textContent = stripWords(state);
      draw.show(place, stripScene(state.strip));
      leftOut.replaceChildren(...leftOutItems(state));
      return false;
    });
  });
}

function stripWords({ fit, recipe }: FitPageState): string {
  const { across, down } = fit.strip;
  if (across.length + down.length > 0)
    return "Cut it out and lay it along the edge of the page: it carries every mark of the patterns below, the most used ones nearest the edge.";
  return `So far it carries “${recipe.title}”, which is drawn above. Put patterns on it, here or among all of them, and it is yours.`;
}

/** Each with the pattern that it is about. */
function leftOutItems({ strip }: FitPageState): readonly HTMLElement[] {
  const titleOf = (slug: string) => strip.patterns.find((one) => one.slug === slug)?.title ?? slug;
  return AXES.flatMap((axis) => {
    const side = strip.sides.find((one) => one.axis === axis);
    return (side?.leftOut ?? []).map((fact) =>
      makeElement(
        "li",
        {},
        makeElement("b", {}, titleOf(fact.pattern)),
        ` is left out ${axis}. ${sayLeftOut(fact)}`,
      ),
    );
  });
}
