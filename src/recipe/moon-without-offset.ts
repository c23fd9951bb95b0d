/** Which labels of a pattern ask for the moon, in a book that names no clock by which its days are reckoned. */
import type { Issue } from "../issue/facts/issue.ts";
import { areasOf } from "./area-tree.ts";
import type { Recipe } from "./recipe.ts";

/** One problem for each such label; a label that was written once is told once. */
export function moonWithoutOffset({ attempts }: Recipe): readonly Issue[] {
  const parts = attempts.flatMap((attempt) =>
    areasOf(attempt).flatMap(({ labelParts = [] }) => labelParts),
  );
  const places = parts.flatMap((part) => (part.kind === "placeholder" && part.at) || []);
  return [...new Set(places)].map((at) => ({ about: "book", kind: "moon-without-offset", at }));
}
