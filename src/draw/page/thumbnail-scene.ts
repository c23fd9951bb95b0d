/** A plan as a small picture: its lines alone, drawn with a broad pen, and a bar for each label. */
import type { DatedEvent } from "../../events/events-in.ts";
import { sayPages, sayPageTitle } from "../../issue/words/say-drawing.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import type { PlanBox, PlanPage } from "../../plan/plan.ts";
import { FILL_DRAWINGS } from "../fill/fill-drawings.ts";
import { type PagePlace, pagePlace } from "../geometry/page-place.ts";
import { type PaperBox, paperBoxOn } from "../geometry/paper-box.ts";
import { rectData } from "../geometry/path-data.ts";
import type { Rect } from "../geometry/rect.ts";
import { placeLabel } from "../label/label-place.ts";
import { labelKinds } from "../label/label-zone.ts";
import type { PathMark, Scene } from "../scene.ts";
import { papersRect } from "./band.ts";
import { boxEdges } from "./box-edges.ts";
import { boxMarks } from "./box-marks.ts";
import { edgeMarks } from "./edge-marks.ts";
import { eventMarks, writtenEvents } from "./event-marks.ts";
import { gatherFills } from "./gather-fills.ts";
import { inLayers, type Layer } from "./layers.ts";
import type { PageDrawing } from "./page-scene.ts";
import { sheetMark } from "./paper-marks.ts";

const PEN = 2.2;
/** Lines of a fill stand at least this part of the paper's height apart. */
const APART = 0.055;

/** The frame is the paper; there is no text in it, and no more marks than a gallery of hundreds can bear. */
export function thumbnailScene({ plan, notebook, recipe, events }: PageDrawing): Scene {
  const places = plan.pages.map((_, index) => pagePlace(notebook, index));
  const written = writtenEvents(plan, events);
  const layers = plan.pages.map((page, index) => {
    const place = places[index];
    return place
      ? [...thumbnailLayers(page, place, notebook), eventBars(page, place, written)]
      : [];
  });
  return {
    id: `thumbnail-${plan.pattern}-${plan.notebook}`,
    title: sayPageTitle(recipe?.title ?? plan.pattern, notebook.title),
    description: sayPages(plan.pages),
    frame: papersRect(places),
    marks: inLayers(layers),
    penScale: PEN,
  };
}

function thumbnailLayers(page: PlanPage, place: PagePlace, notebook: Notebook): readonly Layer[] {
  const leaves = page.boxes.map((box) => paperBoxOn(place, widened(box, place)));
  const fills = leaves.map((paperBox) => FILL_DRAWINGS[paperBox.box.fill](paperBox));
  return [
    [sheetMark("paper", place.paper)],
    gatherFills(fills).filter(({ kind }) => kind === "path"),
    edgeMarks(place, notebook, boxEdges(page), PEN),
    labelBars(leaves, page),
  ];
}

/** Where events would stand, as bars in one path. */
function eventBars(
  page: PlanPage,
  place: PagePlace,
  events: readonly DatedEvent[],
): readonly PathMark[] {
  if (events.length === 0) return [];
  const { boxes } = boxMarks(place, page, true);
  return barMarks("event", eventMarks(boxes, events).taken);
}

/** The box with its fill so far apart that the lines can still be told apart. */
function widened(box: PlanBox, { pitch, paper }: PagePlace): PlanBox {
  const apart = box.every * Math.min(pitch.across, pitch.down);
  const times = Math.max(1, Math.ceil((APART * paper.height) / apart));
  return { ...box, every: box.every * times };
}

/** Where text would stand, as bars in one path. */
function labelBars(leaves: readonly PaperBox[], page: PlanPage): readonly PathMark[] {
  const kindOf = labelKinds(page);
  const taken = leaves.flatMap(
    (paperBox) => placeLabel(paperBox, kindOf(paperBox.box))?.taken ?? [],
  );
  return barMarks("label-bar", taken);
}

function barMarks(role: "label-bar" | "event", rects: readonly Rect[]): readonly PathMark[] {
  const d = rects.map(({ x, y, width, height }) => rectData(x, y, width, height)).join("");
  return d === "" ? [] : [{ kind: "path", role, d }];
}
