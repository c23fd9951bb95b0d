/** A page that shows how a notebook divides: a row of equal parts for each count, as a recipe like any other. */
import { equalParts } from "../../divide/division-table.ts";
import type { ShareSize } from "../../divide/question.ts";
import { startsAtEdge, usableSteps } from "../../measure/grid-axis.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import type { Area, Recipe, Split, Track } from "../../recipe/recipe.ts";

/** In steps: each row where there is room for it, and the room between two. */
const ROW = 2;
const BETWEEN = 1;

/** More parts than this are too narrow to be worth a row. */
const MOST_PARTS = 12;

/** One row for the whole, one for halves, and so on, as many as the page is high; each part is labelled with its steps. */
export function wallRecipe({ slug, axes }: Notebook): Recipe {
  const across = usableSteps(axes.across);
  const down = usableSteps(axes.down);
  const top = startsAtEdge(axes.down) && down > ROW ? 1 : 0;
  const height = Math.min(ROW, down - top);
  const rows = Math.floor((down - top + BETWEEN) / (height + BETWEEN));
  const counts = Array.from(
    { length: Math.min(rows, MOST_PARTS, across) },
    (_, index) => index + 1,
  );
  const tracks = counts.map(
    (count): Track => ({
      size: { kind: "steps", steps: height },
      area: area(partsOf(across, count)),
    }),
  );
  const split = { axis: "down", tracks, ...RULES, gap: { min: BETWEEN, max: BETWEEN } } as const;
  const page = { ...area(split), margin: { steps: { top } } };
  return {
    slug: `equal-parts-${slug}`,
    title: "Equal parts",
    purpose: "reference",
    tags: [],
    attempts: [{ kind: "page", page }],
    body: "",
  };
}

const RULES = { gap: { min: 0, max: 0 }, leftover: { kind: "end" } } as const;

function partsOf(steps: number, count: number): Split {
  const label = String(equalParts(steps, count, 0)?.part ?? "");
  const part: Track = { size: SHARE, area: { ...area(), label } };
  return { axis: "across", tracks: Array.from({ length: count }, () => part), ...RULES };
}

const SHARE: ShareSize = { kind: "share", weight: 100, min: 1, max: Number.POSITIVE_INFINITY };

function area(split?: Split): Area {
  const leaf: Area = { label: "", margin: { steps: {} }, fill: "blank", every: 1 };
  return split ? { ...leaf, split } : leaf;
}
