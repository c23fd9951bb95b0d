/** A strip as a drawing in true size: as it is made, or one of its sides alone. */
import { sayStripDrawing, sayStripTitle } from "../../issue/words/strip-words.ts";
import type { Axis } from "../../measure/axis.ts";
import type { Strip, StripSide } from "../../strip/strip.ts";
import type { Scene } from "../scene.ts";
import { type StripBody, sideBody, stripBodies } from "./strip-body.ts";
import type { StripLook } from "./strip-face.ts";
import { writeStripMarks } from "./strip-mark.ts";
import { placeMarks } from "./strip-place.ts";

/** Around the cut, and between two pieces. */
const MARGIN = 2;
const BETWEEN = 4;

/** The whole strip, ready to be cut out. */
export function stripScene(strip: Strip, look: StripLook = {}): Scene {
  return sceneOf(stripBodies(strip, look), stripNames(strip));
}

/** One side, upright. */
export function sideScene(strip: Strip, side: StripSide, look: StripLook = {}): Scene {
  return sceneOf([sideBody(strip, side, look)], stripNames(strip, side.axis));
}

/** What a drawing of a strip, or of one side of it, is called, and what it shows for those who cannot see it. */
export function stripNames(strip: Strip, axis?: Axis): SceneNames {
  return {
    id: ["strip", strip.slug, strip.notebook.slug, ...(axis === undefined ? [] : [axis])].join("-"),
    title: sayStripTitle(strip.title, strip.notebook.title, axis),
    description: sayStripDrawing(strip.patterns),
  };
}

type SceneNames = Pick<Scene, "id" | "title" | "description">;

function sceneOf(bodies: readonly StripBody[], names: SceneNames): Scene {
  const tops = bodies.map((_, index) =>
    bodies.slice(0, index).reduce((sum, body) => sum + body.height + BETWEEN, 0),
  );
  const height = bodies.reduce((sum, body) => sum + body.height, BETWEEN * (bodies.length - 1));
  return {
    ...names,
    frame: {
      x: -MARGIN,
      y: -MARGIN,
      width: Math.max(...bodies.map((body) => body.width)) + 2 * MARGIN,
      height: height + 2 * MARGIN,
    },
    marks: bodies.flatMap((body, index) =>
      writeStripMarks(placeMarks(body.marks, { x: 0, y: tops[index] ?? 0, turned: false })),
    ),
  };
}
