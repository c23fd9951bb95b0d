/** Marks as SVG elements to be: one of each kind after another in a group that says their look once. */
import type { Mark, Scene, TextMark } from "../scene.ts";
import { markLook } from "../style/mark-style.ts";
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

/** Of one kind, and of one class. */
function isOneGroup(a: Mark, b: Mark): boolean {
  return a.kind === b.kind && a.role === b.role && a.lane === b.lane;
}

/** A shape before it is known what it shares; those of one look have the very same `look`. */
interface Drawn extends Pick<Shape, "name" | "text"> {
  readonly look: Attributes;
  readonly place: Attributes;
}

/** The shapes of one group. Numbers that follow one another in one size become one element. */
function shapesOf(marks: readonly Mark[], penScale: number): readonly Drawn[] {
  const lookOf = groupLook(penScale);
  const drawn: Drawn[] = [];
  let run: [TextMark, ...TextMark[]] | undefined;
  const endRun = () => {
    if (run) drawn.push(numbersShape(run, lookOf(run[0])));
    run = undefined;
  };
  for (const mark of marks) {
    if (isNumber(mark)) {
      if (run && isSameHand(run[0], mark)) {
        run.push(mark);
        continue;
      }
      endRun();
      run = [mark];
      continue;
    }
    endRun();
    drawn.push(markShape(mark, lookOf(mark)));
  }
  endRun();
  return drawn;
}

/** The marks of a group can differ in their dash alone: each look is worked out once. */
function groupLook(penScale: number): (mark: Mark) => Attributes {
  const looks = new Map<string, Attributes>();
  return (mark) => {
    const key = mark.kind === "path" && mark.dash ? mark.dash.join(" ") : "";
    const known = looks.get(key);
    if (known) return known;
    const ink = markLook(mark, penScale);
    const look = {
      class: classOf(mark),
      ...(mark.kind === "path" ? pathLook(ink) : textLook(ink)),
    };
    looks.set(key, look);
    return look;
  };
}

function markShape(mark: Mark, look: Attributes): Drawn {
  if (mark.kind === "path") return { name: "path", look, place: { d: mark.d }, text: "" };
  return { name: "text", look, place: textPlace(mark), text: xmlText(mark.text) };
}

/** One number, or several in one element. */
function numbersShape(numbers: readonly [TextMark, ...TextMark[]], look: Attributes): Drawn {
  if (numbers.length === 1) return markShape(numbers[0], look);
  const run = numberRun(numbers);
  return { name: "text", look, place: runPlace(numbers[0].size, run), text: run.text };
}

/** What no shape inherits from its group. */
const PLACES: ReadonlySet<string> = new Set(["x", "y", "d", "transform"]);

/** Moves what all shapes have in common to their group; a shape by itself needs none. */
function shareAttributes(drawn: readonly Drawn[]): ShapeGroup {
  const [first, ...others] = drawn;
  if (!first || others.length === 0) return { shared: {}, shapes: drawn.map(wholeShape) };
  const shared = {
    ...inCommon(
      first.look,
      others.map(({ look }) => look),
    ),
    ...inCommon(
      first.place,
      others.map(({ place }) => place),
    ),
  };
  return {
    shared,
    shapes: drawn.map(({ name, look, place, text }) => ({
      name,
      attributes: { ...without(look, shared), ...without(place, shared) },
      text,
    })),
  };
}

function wholeShape({ name, look, place, text }: Drawn): Shape {
  return { name, attributes: { ...look, ...place }, text };
}

function inCommon(first: Attributes, others: readonly Attributes[]): Attributes {
  if (others.every((other) => other === first)) return first;
  return Object.fromEntries(
    Object.entries(first).filter(
      ([name, text]) => !PLACES.has(name) && others.every((other) => other[name] === text),
    ),
  );
}

function without(attributes: Attributes, shared: Attributes): Attributes {
  return Object.fromEntries(Object.entries(attributes).filter(([name]) => !(name in shared)));
}
