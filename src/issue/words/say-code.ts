/** What people wrote, quoted inside a sentence. */
import { harmless } from "./harmless-text.ts";

const LONGEST = 48;

/** The text between backticks: harmless, on one line, and cut where it is long. */
export function sayCode(text: string): string {
  const characters = [...text];
  const cut = characters.length > LONGEST ? `${characters.slice(0, LONGEST).join("")}…` : text;
  return `\`${harmless(cut).replaceAll("`", "'")}\``;
}

/** Several, separated by commas. */
export function sayCodes(texts: readonly string[]): string {
  return texts.map(sayCode).join(", ");
}
