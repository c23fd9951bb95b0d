/** The part that reads files: loaded when there is one to read, since YAML and its checks are large. */
import "../../../src/written/without-eval.ts";
import { readNotebook } from "../../../src/notebook/read-notebook.ts";
import { reportProblems } from "../../../src/problem/report.ts";
import { sayProblem } from "../../../src/problem/say/say-problem.ts";
import { readRecipe } from "../../../src/recipe/read-recipe.ts";
import { readStripRecipe } from "../../../src/recipe/read-strip-recipe.ts";
import type { ReaderPart } from "./reader-part.ts";

const part: ReaderPart = {
  readNotebook,
  readRecipe,
  readStripRecipe,
  reportProblems,
  sayProblem,
};

Object.assign(window, { spanbookReader: part });
