/** The drawing of a notebook: its bare grid with the counts, the first dot's place and both middles. */
import { sayGrid, sayGridTitle } from "../../issue/words/say-drawing.ts";
import type { Axis } from "../../measure/axis.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import { type PagePlace, pagePlace } from "../geometry/page-place.ts";
import type { Mark, Scene } from "../scene.ts";
import { bandedFrame, bandSides, bareSides } from "./band.ts";
import { countMarks } from "./count-marks.ts";
import { dimensionMarks } from "./dimension-marks.ts";
import { gridMarks } from "./grid-marks.ts";
import { keyMarks, keySize } from "./key-marks.ts";
import { inLayers } from "./layers.ts";
import { middleLines, middleSigns } from "./middle-marks.ts";
import { bindingMarks, sheetMark } from "./paper-marks.ts";

const EVERY = 5;

/** One page in millimetres of paper; 0, 0 is its top left corner. */
export function gridScene(notebook: Notebook): Scene {
  const place = pagePlace(notebook, 0);
  const frame = bandedFrame([place], keySize(place, notebook.middle));
  return {
    id: `grid-${notebook.slug}`,
    title: sayGridTitle(notebook.title),
    description: describeGrid(notebook, place),
    frame,
    marks: [
      sheetMark("ground", frame),
      sheetMark("paper", place.paper),
      ...bindingMarks(place.paper, notebook.binding, "single"),
      ...gridMarks(place, notebook.ruling),
      ...bandMarks(place, notebook),
    ],
  };
}

/** Counts with every fifth position named, the middles across the page, and the first dot. */
function bandMarks(place: PagePlace, { middle }: Notebook): readonly Mark[] {
  const places = [place];
  const sides = bandSides(places);
  const counts = sides.map((side) =>
    countMarks(side, { middle, positions: everyFifth(place, side.axis) }),
  );
  return [
    ...middleLines(places, middle),
    ...dimensionMarks(place),
    ...inLayers(counts.map((marks) => [marks])),
    ...middleSigns([...sides, ...bareSides(places)], middle),
    ...keyMarks(place, middle),
  ];
}

function everyFifth({ lines }: PagePlace, axis: Axis): readonly number[] {
  return lines[axis].map((_, position) => position).filter((position) => position % EVERY === 0);
}

function describeGrid({ axes, ruling }: Notebook, { lines, paper }: PagePlace): string {
  const dots = { across: axes.across.dots, down: axes.down.dots };
  const steps = { across: lines.across.length - 1, down: lines.down.length - 1 };
  return sayGrid({ paper, ruling, dots, steps });
}
