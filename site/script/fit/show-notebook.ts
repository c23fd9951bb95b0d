/** The notebook's picture, its numbers, and how to count it. */
import { gridScene } from "../../../src/draw/page/grid-scene.ts";
import type { Scene } from "../../../src/draw/scene.ts";
import { sayMm } from "../../../src/issue/words/say-count.ts";
import { AXES } from "../../../src/measure/axis.ts";
import { type GridAxis, middlesOf, usableSteps } from "../../../src/measure/grid-axis.ts";
import { toMm } from "../../../src/measure/length.ts";
import type { Notebook } from "../../../src/notebook/notebook.ts";
import type { Queue } from "../ui/idle-queue.ts";
import { makeElement } from "../ui/make-element.ts";
import { partOf } from "../ui/parts.ts";
import type { Draw } from "../ui/show-drawing.ts";
import type { FitStore } from "./fit-store.ts";

interface Shows {
  readonly draw: Draw;
  readonly queue: Queue;
}

/** Follows the notebook: its numbers at once, its small picture and the help for counting when there is time. */
export function bindNotebookPicture(
  page: ParentNode,
  store: FitStore,
  { draw, queue }: Shows,
): void {
  const [picture, tally] = [partOf(page, "picture"), partOf(page, "tally")];
  const [corner, words] = [partOf(page, "corner"), partOf(page, "counting-words")];
  let last: Notebook | undefined;
  let wasOld = false;
  store.subscribe(({ notebook, errors }) => {
    const isOld = errors.notebook.length > 0;
    picture.classList.toggle("stale", isOld);
    corner.classList.toggle("stale", isOld);
    words.hidden = isOld;
    if (isOld !== wasOld || notebook !== last) tally.replaceChildren(...tallyOf(notebook, isOld));
    wasOld = isOld;
    if (notebook === last) return;
    const show = () => {
      const scene = gridScene(notebook);
      draw.show(picture, pictureScene(scene, notebook));
      picture.style.width = `${(pictureWidth(notebook) / BASE_PX).toFixed(2)}rem`;
      draw.show(corner, cornerScene(scene, notebook));
      return false;
    };
    // The first one at once, so that nothing moves when it comes.
    if (last) queue.put("picture", show);
    else show();
    last = notebook;
  });
}

/** Steps and middles, across and down; of a notebook that is no longer what is written, no number. */
function tallyOf({ axes, middle }: Notebook, isOld: boolean): readonly HTMLElement[] {
  const rows: readonly (readonly [string, (grid: GridAxis) => string])[] = [
    ["Steps", (grid) => `${usableSteps(grid)}`],
    ["Middle", (grid) => middlesOf(usableSteps(grid), middle).join(" and ")],
    ["First dot", (grid) => sayMm(toMm(grid.firstDot))],
  ];
  return rows.map(([name, read]) =>
    makeElement(
      "div",
      {},
      makeElement("dt", {}, name),
      ...AXES.map((axis) =>
        makeElement("dd", {}, isOld ? "–" : read(axes[axis]), " ", makeElement("small", {}, axis)),
      ),
    ),
  );
}

/** Around the paper, for the signs that stand out of it. */
const AROUND = 4;
/** All pictures are in one scale, so that a small notebook looks small; the largest papers have to be drawn in. */
const PX_PER_MM = 0.92;
const MOST_PX = 210;
const BASE_PX = 16;

/** The notebook without its numbers, which no eye could read at this size. */
function pictureScene(scene: Scene, { axes }: Notebook): Scene {
  const frame = {
    x: -AROUND,
    y: -AROUND,
    width: toMm(axes.across.paper) + 2 * AROUND,
    height: toMm(axes.down.paper) + 2 * AROUND,
  };
  const marks = scene.marks.filter(({ kind, role }) => kind === "path" && !UNSEEN.has(role));
  return { ...scene, id: `${scene.id}-picture`, frame, marks };
}

const UNSEEN: ReadonlySet<string> = new Set(["ground", "tick", "note"]);

function pictureWidth({ axes }: Notebook): number {
  const width = (toMm(axes.across.paper) + 2 * AROUND) * PX_PER_MM;
  const height = (toMm(axes.down.paper) + 2 * AROUND) * PX_PER_MM;
  return width * Math.min(1, MOST_PX / width, (1.5 * MOST_PX) / height);
}

/** How much of the paper's top left corner is shown, in millimetres. */
const CORNER = { width: 46, height: 30 };

/** The corner where counting begins, with the counts beside it. */
function cornerScene(scene: Scene, { axes }: Notebook): Scene {
  const { x, y } = scene.frame;
  const reach = (grid: GridAxis, least: number) =>
    Math.max(least, toMm(grid.firstDot) + 4.5 * toMm(grid.pitch));
  const frame = {
    x,
    y,
    width: reach(axes.across, CORNER.width) - x,
    height: reach(axes.down, CORNER.height) - y,
  };
  return { ...scene, id: `${scene.id}-corner`, title: "The corner where counting begins", frame };
}
