/** A calendar file with its days alone: what is written in it about people and places is left out before it is kept. */
import { type Component, readComponents } from "./components.ts";
import { contentLines } from "./content-lines.ts";

/** A file that reads the same; lines are not folded. */
export function keptText(bytes: Uint8Array): string {
  const { roots } = readComponents(contentLines(bytes));
  return roots.flatMap(linesOf).join("\r\n");
}

function linesOf({ name, properties, parts }: Component): readonly string[] {
  const decoder = new TextDecoder();
  const own = properties.map(({ bytes }) => decoder.decode(bytes));
  return [`BEGIN:${name}`, ...own, ...parts.filter(isRead).flatMap(linesOf), `END:${name}`];
}

function isRead({ properties, parts }: Component): boolean {
  return properties.length > 0 || parts.some(isRead);
}
