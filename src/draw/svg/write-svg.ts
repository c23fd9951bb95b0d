/** A scene as SVG text, drawn with svg.js in a window that is passed in: svgdom's when building, the page's own in a browser. */
import { type Dom, Svg, withWindow } from "@svgdotjs/svg.js";
import { formatNumber } from "../geometry/path-data.ts";
import type { Scene } from "../scene.ts";
import { FONT_FAMILY } from "../style/role-style.ts";
import { groupMarks, type SvgElement, type SvgGroup } from "./mark-group.ts";
import type { Attributes } from "./svg-attributes.ts";
import { svgText } from "./svg-text.ts";
import { xmlId, xmlText } from "./xml-text.ts";

/** `file` stands by itself; `inline` goes into HTML, which knows SVG's namespace. */
export type SvgForm = "file" | "inline";

/** The same scene gives the same bytes: one element a line, with a line feed at the end. */
export type WriteSvg = (scene: Scene, form?: SvgForm) => string;

/** A writer that draws each scene in a fresh root of one window, which it neither fills nor changes. */
export function createSvgWriter(window: Window): WriteSvg {
  return (scene, form = "file") =>
    withWindow(window, () => svgText(drawRoot(scene).node, form === "file"));
}

/** Title and description first: they name the drawing to those who cannot see it. */
function drawRoot(scene: Scene): Dom {
  const { frame } = scene;
  const [x, y, width, height] = [frame.x, frame.y, frame.width, frame.height].map(formatNumber);
  const id = xmlId(scene.id);
  const root = new Svg();
  root.attr("version", null).attr("xmlns:xlink", null);
  root.attr({
    class: "drawing",
    width: `${width}mm`,
    height: `${height}mm`,
    viewBox: `${x} ${y} ${width} ${height}`,
    role: "img",
    "aria-labelledby": `${id}-title ${id}-desc`,
    "font-family": FONT_FAMILY,
  });
  root.element("title", { id: `${id}-title` }).words(xmlText(scene.title));
  root.element("desc", { id: `${id}-desc` }).words(xmlText(scene.description));
  for (const group of groupMarks(scene)) drawGroup(root, group);
  return root;
}

function drawGroup(root: Dom, { shared, elements }: SvgGroup): void {
  const parent = elements.length > 1 ? draw(root, "g", shared) : root;
  for (const element of elements) writeElement(parent, element);
}

function writeElement(parent: Dom, { name, attributes, text }: SvgElement): void {
  const element = draw(parent, name, attributes);
  if (text !== "") element.words(text);
}

/** The attributes are texts already: svg.js would take each for a colour or a number first, and write it out again. */
function draw(parent: Dom, name: string, attributes: Attributes): Dom {
  const element = parent.element(name);
  for (const [key, value] of Object.entries(attributes)) element.node.setAttribute(key, value);
  return element;
}
