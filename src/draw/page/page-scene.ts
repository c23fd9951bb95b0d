/** The drawing of a plan: its pages side by side as the keeper's pen would leave them. */
import type { DatedEvent } from "../../events/events-in.ts";
import { sayPages, sayPageTitle } from "../../issue/words/say-drawing.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import type { FittingPlan, PlanPage } from "../../plan/plan.ts";
import type { Recipe } from "../../recipe/recipe.ts";
import { type PagePlace, pagePlace } from "../geometry/page-place.ts";
import type { Mark, Scene } from "../scene.ts";
import { bandedFrame, bandSides, bareSides, type KeySize, NO_KEY, papersRect } from "./band.ts";
import { boxEdges, type WeightedEdge } from "./box-edges.ts";
import { boxMarks } from "./box-marks.ts";
import { countMarks } from "./count-marks.ts";
import { edgePositions } from "./counted-positions.ts";
import { edgeMarks } from "./edge-marks.ts";
import { eventMarks, writtenEvents } from "./event-marks.ts";
import { gridMarks } from "./grid-marks.ts";
import { keyMarks, keySize } from "./key-marks.ts";
import { inLayers, type Layer } from "./layers.ts";
import { marginMarks, marginsOf } from "./margin-marks.ts";
import { middleSigns } from "./middle-marks.ts";
import { bindingMarks, sheetMark } from "./paper-marks.ts";

export interface PageDrawing {
  readonly plan: FittingPlan;
  readonly notebook: Notebook;
  /** For the title and the margins; a plan by itself is drawn without them. */
  readonly recipe?: Recipe;
  /** Of the plan's days: written into the boxes of their days, where there is room. */
  readonly events?: readonly DatedEvent[];
  readonly options?: PageOptions;
}

/** Everything is shown unless it is switched off. */
export interface PageOptions {
  /** Counts, middles and their key beside the paper; without them the frame is the paper. */
  readonly hasBands?: boolean;
  /** The sheet, its bound side and its margins: not wanted where the keeper's own paper is printed on. */
  readonly hasPaper?: boolean;
  readonly hasGrid?: boolean;
  readonly hasLabels?: boolean;
  readonly hasMiddles?: boolean;
}

/** The drawing in millimetres of paper; 0, 0 is the top left corner of the first page. */
export function pageScene(drawing: PageDrawing): Scene {
  const { plan, notebook, recipe, options = {} } = drawing;
  const pages = plan.pages.map((page, index): DrawnPage => {
    return { page, place: pagePlace(notebook, index), edges: boxEdges(page) };
  });
  const places = pages.map(({ place }) => place);
  const hasBands = options.hasBands ?? true;
  const frame = hasBands ? bandedFrame(places, keyRoom(drawing, places)) : papersRect(places);
  return {
    id: `page-${plan.pattern}-${plan.notebook}`,
    title: sayPageTitle(recipe?.title ?? plan.pattern, notebook.title),
    description: sayPages(plan.pages),
    frame,
    marks: [
      ...(hasBands ? [sheetMark("ground", frame)] : []),
      ...inLayers(pages.map((page) => paperLayers(drawing, page))),
      ...inLayers(pages.map((page) => drawnLayers(drawing, page))),
      ...(hasBands ? bandMarks(drawing, pages) : []),
    ],
  };
}

interface DrawnPage {
  readonly page: PlanPage;
  readonly place: PagePlace;
  readonly edges: readonly WeightedEdge[];
}

/** The paper itself. */
function paperLayers(drawing: PageDrawing, { page, place }: DrawnPage): readonly Layer[] {
  const { plan, notebook, recipe, options } = drawing;
  if (!(options?.hasPaper ?? true)) return [];
  const margins = recipe && marginsOf(plan, recipe, notebook, page);
  return [
    [sheetMark("paper", place.paper)],
    marginMarks(place, page, margins),
    bindingMarks(place.paper, notebook.binding, page.side),
  ];
}

/** The marks on one page, from its dots up. */
function drawnLayers(drawing: PageDrawing, { page, place, edges }: DrawnPage): readonly Layer[] {
  const { plan, notebook, events, options = {} } = drawing;
  const { hasGrid = true, hasLabels = true } = options;
  const { fills, labels, taken, boxes } = boxMarks(place, page, hasLabels);
  const written = eventMarks(boxes, hasLabels ? writtenEvents(plan, events) : []);
  return [
    hasGrid ? gridMarks(place, notebook.ruling, [...taken, ...written.taken]) : [],
    fills,
    edgeMarks(place, notebook, edges),
    labels,
    written.marks,
  ];
}

function keyRoom(drawing: PageDrawing, [first]: readonly PagePlace[]): KeySize {
  const { notebook, options } = drawing;
  return first && (options?.hasMiddles ?? true) ? keySize(first, notebook.middle) : NO_KEY;
}

/** The counts beside the paper, the middles, and the key below. */
function bandMarks(drawing: PageDrawing, pages: readonly DrawnPage[]): readonly Mark[] {
  const { notebook, options } = drawing;
  const { middle } = notebook;
  const places = pages.map(({ place }) => place);
  const sides = bandSides(places);
  const counts = sides.map((side) => {
    const edges = pages.find(({ place }) => place === side.place)?.edges ?? [];
    return countMarks(side, { middle, positions: edgePositions(edges, side.axis) });
  });
  const [first] = places;
  const hasMiddles = options?.hasMiddles ?? true;
  return [
    ...inLayers(counts.map((marks) => [marks])),
    ...(hasMiddles ? middleSigns([...sides, ...bareSides(places)], middle) : []),
    ...(hasMiddles && first ? keyMarks(first, middle) : []),
  ];
}
