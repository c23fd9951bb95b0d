/** Marks as SVG elements to be: one of each kind after another in a group that says their look once. */
import type { Mark, Scene, TextMark } from "../scene.ts";
import { markStyle } from "../style/mark-style.ts";
import { isNumber, isSameType, numberRun } from "./number-run.ts";
import {
  type Attributes,
  classOf,
  pathAttributes,
  runPlace,
  textAttributes,
  textPlace,
} from "./svg-attributes.ts";
import { xmlText } from "./xml-text.ts";

/** An element with the attributes that are its own. */
export interface SvgElement {
  readonly name: "path" | "text";
  readonly attributes: Attributes;
  readonly text: string;
}

/** Shapes that follow one another in one role; what all of them share is said once. */
export interface SvgGroup {
  readonly shared: Attributes;
  readonly elements: readonly SvgElement[];
}

/** The marks of a scene in their order, gathered into groups. */
export function groupMarks({ marks, penScale }: Scene): readonly SvgGroup[] {
  const groups: Mark[][] = [];
  for (const mark of marks) {
    const last = groups.at(-1);
    if (last?.[0] && isOneGroup(last[0], mark)) last.push(mark);
    else groups.push([mark]);
  }
  return groups.map((group) => shareAttributes(elementsOf(group, penScale ?? 1)));
}

/** Of one kind, and of one class. */
function isOneGroup(a: Mark, b: Mark): boolean {
  return a.kind === b.kind && a.role === b.role && a.lane === b.lane;
}

/** A shape before it is known what it shares; those of one look have the very same `look`. */
interface DrawnMark extends Pick<SvgElement, "name" | "text"> {
  readonly attributes: Attributes;
  readonly place: Attributes;
}

/** The shapes of one group. Numbers that follow one another in one size become one element. */
function elementsOf(marks: readonly Mark[], penScale: number): readonly DrawnMark[] {
  const attributesOf = groupAttributes(penScale);
  const drawn: DrawnMark[] = [];
  let run: [TextMark, ...TextMark[]] | undefined;
  const endRun = () => {
    if (run) drawn.push(numbersElement(run, attributesOf(run[0])));
    run = undefined;
  };
  for (const mark of marks) {
    if (isNumber(mark)) {
      if (run && isSameType(run[0], mark)) {
        run.push(mark);
        continue;
      }
      endRun();
      run = [mark];
      continue;
    }
    endRun();
    drawn.push(markElement(mark, attributesOf(mark)));
  }
  endRun();
  return drawn;
}

/** The marks of a group can differ in their dash alone: each look is worked out once. */
function groupAttributes(penScale: number): (mark: Mark) => Attributes {
  const attributeSets = new Map<string, Attributes>();
  return (mark) => {
    const key = mark.kind === "path" && mark.dash ? mark.dash.join(" ") : "";
    const known = attributeSets.get(key);
    if (known) return known;
    const style = markStyle(mark, penScale);
    const attributes = {
      class: classOf(mark),
      ...(mark.kind === "path" ? pathAttributes(style) : textAttributes(style)),
    };
    attributeSets.set(key, attributes);
    return attributes;
  };
}

function markElement(mark: Mark, attributes: Attributes): DrawnMark {
  if (mark.kind === "path") return { name: "path", attributes, place: { d: mark.d }, text: "" };
  return { name: "text", attributes, place: textPlace(mark), text: xmlText(mark.text) };
}

/** One number, or several in one element. */
function numbersElement(
  numbers: readonly [TextMark, ...TextMark[]],
  attributes: Attributes,
): DrawnMark {
  if (numbers.length === 1) return markElement(numbers[0], attributes);
  const run = numberRun(numbers);
  return { name: "text", attributes, place: runPlace(numbers[0].size, run), text: run.text };
}

/** What no shape inherits from its group. */
const PLACES: ReadonlySet<string> = new Set(["x", "y", "d", "transform"]);

/** Moves what all shapes have in common to their group; a shape by itself needs none. */
function shareAttributes(drawn: readonly DrawnMark[]): SvgGroup {
  const [first, ...others] = drawn;
  if (!first || others.length === 0) return { shared: {}, elements: drawn.map(wholeElement) };
  const shared = {
    ...inCommon(
      first.attributes,
      others.map(({ attributes }) => attributes),
    ),
    ...inCommon(
      first.place,
      others.map(({ place }) => place),
    ),
  };
  return {
    shared,
    elements: drawn.map(({ name, attributes, place, text }) => ({
      name,
      attributes: { ...without(attributes, shared), ...without(place, shared) },
      text,
    })),
  };
}

function wholeElement({ name, attributes, place, text }: DrawnMark): SvgElement {
  return { name, attributes: { ...attributes, ...place }, text };
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
