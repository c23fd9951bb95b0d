/** The labels of a recipe's areas, by their place in a plan. */
import type { LabelAt } from "../issue/words/say-path.ts";
import type { PageSide } from "../measure/paper-side.ts";
import type { Area, Attempt } from "./recipe.ts";

/** Looks up the label of the area at a place of one attempt; undefined where it has none. */
export function labelsOf(attempt: Attempt): LabelAt {
  return ({ side, path }) => areaAt(rootOf(attempt, side), path)?.label || undefined;
}

function rootOf(attempt: Attempt, side: PageSide): Area {
  if (attempt.kind === "page") return attempt.page;
  return side === "right" ? attempt.right : attempt.left;
}

/** Every second word of a path is a track's index. */
function areaAt(root: Area, path: string): Area | undefined {
  const indexes = path.split(".").filter((_, place) => place % 2 === 1);
  let area: Area | undefined = root;
  for (const index of indexes) area = area?.split?.tracks[Number(index)]?.area;
  return area;
}
