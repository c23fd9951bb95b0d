/** The text of `strip.json`. */
import type { Strip } from "./strip.ts";
import { stripJson } from "./strip-json.ts";

/** The same bytes in the build and in the page. */
export function stripJsonText(strip: Strip): string {
  return `${JSON.stringify(stripJson(strip), null, 1)}\n`;
}
