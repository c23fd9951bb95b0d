/** A drawing as text, read from the DOM that it was drawn in. */

import { escapedXml } from "./xml-text.ts";

const NAMESPACE = "http://www.w3.org/2000/svg";

/** The elements that hold text: a line each. All others hold elements, or nothing. */
const TEXTS: ReadonlySet<string> = new Set(["title", "desc", "text"]);

/**
 * One element a line, with a line feed at the end. A drawing holds elements of SVG without prefixes, their attributes
 * and text; so this is shorter work than what a DOM does that must be ready for everything.
 */
export function svgText(root: Element, hasNamespace: boolean): string {
  const attributes = attributesText(root);
  const namespace = hasNamespace ? ` xmlns="${NAMESPACE}"` : "";
  return `<svg${namespace}${attributes}>\n${innerText(root)}</svg>\n`;
}

function innerText(parent: Element): string {
  let lines = "";
  for (const child of parent.children) lines += elementText(child);
  return lines;
}

function elementText(element: Element): string {
  const name = element.nodeName;
  const head = `<${name}${attributesText(element)}`;
  if (TEXTS.has(name)) return `${head}>${escapedXml(element.textContent ?? "")}</${name}>\n`;
  if (element.childNodes.length === 0) return `${head}/>\n`;
  return `${head}>\n${innerText(element)}</${name}>\n`;
}

function attributesText(element: Element): string {
  let text = "";
  for (const { name, value } of element.attributes) {
    if (name !== "xmlns") text += ` ${name}="${escapedXml(value)}"`;
  }
  return text;
}
