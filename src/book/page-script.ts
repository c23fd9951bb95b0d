/** Values that a page's scripts find in their window: as classic scripts, since a page on disk may load nothing else. */
import { scriptValue } from "./script-value.ts";

/** A script that gives plain data to the page under a name. */
export function pageScript(name: string, data: unknown): string {
  return `window.${name}=${scriptValue(data)};\n`;
}
