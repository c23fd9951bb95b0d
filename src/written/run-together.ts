/** Knows a key and its value that were written without what stands between them. */

import type { Problem } from "../issue/facts/issue.ts";
import type { Place } from "../issue/facts/place.ts";

/** A key and its value that were meant and became one word, because a colon or the space behind it is missing. */
export function runTogether(
  written: string,
  at: Place,
  { allowed }: { readonly allowed: readonly string[] },
): Problem | undefined {
  const parts = written.match(/^(\p{L}+)(:|\s*=\s*|\s+)(\S.*)$/u);
  const [, key = "", between = "", value = ""] = parts ?? [];
  if (!parts || (between !== ":" && !allowed.includes(key))) return undefined;
  const lacks = between === ":" ? "space" : "colon";
  return { about: "shape", kind: "run-together", written, key, value, lacks, at };
}
