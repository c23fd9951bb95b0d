/** A strip as a drawing in true size: as it is made, or one of its sides alone. */
import type { Strip, StripSide } from "../strip/strip.ts";
import type { Scene } from "./scene.ts";
import { type StripBody, sideBody, stripBodies } from "./strip-body.ts";
import type { StripLook } from "./strip-face.ts";
import { writeStripMarks } from "./strip-mark.ts";
import { placeMarks } from "./strip-place.ts";

/** Around the cut, and between two pieces. */
const MARGIN = 2;
const BETWEEN = 4;

/** The whole strip, ready to be cut out. */
export function stripScene(strip: Strip, look: StripLook = {}): Scene {
  return sceneOf(strip, stripBodies(strip, look), {
    id: `strip-${strip.slug}-${strip.notebook.slug}`,
    title: `${strip.title} for ${strip.notebook.title}`,
  });
}

/** One side, upright. */
export function sideScene(strip: Strip, side: StripSide, look: StripLook = {}): Scene {
  return sceneOf(strip, [sideBody(strip, side, look)], {
    id: `strip-${strip.slug}-${strip.notebook.slug}-${side.axis}`,
    title: `${strip.title} for ${strip.notebook.title}, ${side.axis}`,
  });
}

function sceneOf(
  strip: Strip,
  bodies: readonly StripBody[],
  named: { readonly id: string; readonly title: string },
): Scene {
  const tops = bodies.map((_, index) =>
    bodies.slice(0, index).reduce((sum, body) => sum + body.height + BETWEEN, 0),
  );
  const height = bodies.reduce((sum, body) => sum + body.height, BETWEEN * (bodies.length - 1));
  return {
    ...named,
    description: describe(strip),
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

/** What the drawing shows, for those who cannot see it. */
function describe(strip: Strip): string {
  const patterns = strip.patterns.map(({ letter, title }) => `${letter} ${title}`).join(", ");
  return `A ruler in true size with the marks of ${patterns}.`;
}
