/** The one strip for all pages of a set-up. */
import { AXES } from "../measure/axis.ts";
import type { Notebook } from "../notebook/notebook.ts";
import { buildSide } from "../strip/build-side.ts";
import { COLOUR_COUNT } from "../strip/build-strip.ts";
import { letterOf } from "../strip/run-labels.ts";
import type { Strip } from "../strip/strip.ts";
import type { Setup } from "./setup.ts";
import { setupUses } from "./setup-contents.ts";

/** Carries what its pages need, on one notebook; what is drawn most often comes first. */
export function setupStrip(setup: Setup, notebook: Notebook): Strip {
  const { recipe, titles, plans } = setup;
  const { slug, title, lanes, make, width } = recipe;
  const uses = [...setupUses(setup)].sort(([, a], [, b]) => b - a);
  const ranked = uses.flatMap(([pattern]) => plans.filter((plan) => plan.pattern === pattern));
  return {
    slug,
    title,
    notebook: { slug: notebook.slug, title: notebook.title },
    make,
    width,
    patterns: uses.map(([pattern], index) => ({
      slug: pattern,
      title: titles.get(pattern) ?? pattern,
      colour: (index % COLOUR_COUNT) + 1,
      letter: letterOf(index),
    })),
    sides: AXES.map((axis) => buildSide({ axis, notebook, plans: ranked, lanes })),
  };
}
