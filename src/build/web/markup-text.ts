/** XML files for other programs, an element a line, with every text escaped. */
import { xmlLines, xmlText } from "../../draw/svg/xml-text.ts";

const DECLARATION = '<?xml version="1.0" encoding="UTF-8"?>';

/** A file from its lines. */
export function xmlFile(lines: readonly string[]): string {
  return `${[DECLARATION, ...lines].join("\n")}\n`;
}

/** An element that holds text: what XML forbids is taken out, what would be read as markup is escaped. */
export function xmlElement(name: string, text: string, attributes = ""): string {
  return `<${name}${attributes}>${htmlText(xmlText(text))}</${name}>`;
}

/** An element that holds HTML as text, in which white space may matter. */
export function xmlHtmlElement(name: string, html: string, attributes = ""): string {
  return `<${name}${attributes}>${htmlText(xmlLines(html).trim())}</${name}>`;
}

/** Every character that could end the text is written by its name. */
export function htmlText(text: string): string {
  return text
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;")
    .replaceAll("'", "&#39;");
}

/** A sentence in which words between backticks are code, as HTML. */
export function codesHtml(text: string): string {
  return htmlText(text).replace(/`([^`]+)`/g, "<code>$1</code>");
}
