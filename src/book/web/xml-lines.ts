/** XML files for other programs, an element a line, with every text escaped. */
import { xmlLines, xmlText } from "../../draw/svg/xml-text.ts";
import { htmlText } from "../html-text.ts";

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
export function xmlHtmlElement(name: string, html: string): string {
  return `<${name}>${htmlText(xmlLines(html).trim())}</${name}>`;
}
