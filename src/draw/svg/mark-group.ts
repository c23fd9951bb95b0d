/** Marks as SVG elements to be: one of each kind after another in a group that says their look once. */
import type { Mark, Scene, TextMark } from "../scene.ts";
import { markLook } from "./mark-look.ts";
import { isNumber, isSameHand, numberRun } from "./number-run.ts";
import {
  type Attributes,
  classOf,
  pathLook,
  runPlace,
  textLook,
  textPlace,
} from "./svg-attributes.ts";
import { xmlText } from "./xml-text.ts";

/** An element with the attributes that are its own. */
export interface Shape {
  readonly name: "path" | "text";
  readonly attributes: Attributes;
  readonly text: string;
}

/** Shapes that follow one another in one role; what all of them share is said once. */
export interface ShapeGroup {
  readonly shared: Attributes;
  readonly shapes: readonly Shape[];
}

/** The marks of a scene in their order, gathered into groups. */
export function groupMarks({ marks, penScale }: Scene): readonly ShapeGroup[] {
  const groups: Mark[][] = [];
  for (const mark of marks) {
    const last = groups.at(-1);
    if (last?.[0] && isOneGroup(last[0], mark)) last.push(mark);
    else groups.push([mark]);
  }
  return groups.map((group) => shareAttributes(shapesOf(group, penScale ?? 1)));
}

function isOneGroup(a: Mark, b: Mark): boolean {
  return a.kind === b.kind && classOf(a) === classOf(b);
}

/** Numbers that follow one another in one size become one element. */
function shapesOf(marks: readonly Mark[], penScale: number): readonly Shape[] {
  const runs: (readonly [Mark, ...TextMark[]])[] = [];
  let run: [TextMark, ...TextMark[]] | undefined;
  for (const mark of marks) {
    if (run && isNumber(mark) && isSameHand(run[0], mark)) {
      run.push(mark);
      continue;
    }
    run = isNumber(mark) ? [mark] : undefined;
    runs.push(run ?? [mark]);
  }
  return runs.map((marksOfShape) => shapeOf(marksOfShape, penScale));
}

/** One mark, or several numbers. */
function shapeOf([mark, ...others]: readonly [Mark, ...TextMark[]], penScale: number): Shape {
  const look = markLook(mark, penScale);
  const known = { class: classOf(mark) };
  if (mark.kind === "path") {
    return { name: "path", attributes: { ...known, ...pathLook(look), d: mark.d }, text: "" };
  }
  const shown = { ...known, ...textLook(look) };
  if (others.length > 0) {
    const run = numberRun([mark, ...others]);
    return { name: "text", attributes: { ...shown, ...runPlace(mark.size, run) }, text: run.text };
  }
  return {
    name: "text",
    attributes: { ...shown, ...textPlace(mark) },
    text: xmlText(mark.text),
  };
}

/** What no shape inherits from its group. */
const PLACES: ReadonlySet<string> = new Set(["x", "y", "d", "transform"]);

/** Moves what all shapes have in common to their group; a shape by itself needs none. */
function shareAttributes(shapes: readonly Shape[]): ShapeGroup {
  if (shapes.length < 2) return { shared: {}, shapes };
  const [first] = shapes;
  const shared = Object.entries(first?.attributes ?? {}).filter(
    ([name, text]) =>
      !PLACES.has(name) && shapes.every(({ attributes }) => attributes[name] === text),
  );
  const names = new Set(shared.map(([name]) => name));
  const own = (attributes: Attributes): Attributes =>
    Object.fromEntries(Object.entries(attributes).filter(([name]) => !names.has(name)));
  return {
    shared: Object.fromEntries(shared),
    shapes: shapes.map((shape) => ({ ...shape, attributes: own(shape.attributes) })),
  };
}
