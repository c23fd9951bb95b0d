/** The part that reads files: loaded when there is one to read, since YAML and its checks are large. */
import "./without-eval.ts";
import { reportProblems } from "../../../../src/issue/report/report.ts";
import { sayProblem } from "../../../../src/issue/words/say-issue.ts";
import { readNotebook } from "../../../../src/notebook/read-notebook.ts";
import { readRecipe } from "../../../../src/recipe/read/read-recipe.ts";
import { readStripRecipe } from "../../../../src/recipe/read/read-strip-recipe.ts";
import type { ReaderPart } from "./reader-part.ts";

const part: ReaderPart = {
  readNotebook,
  readRecipe,
  readStripRecipe,
  reportProblems,
  sayProblem,
};

Object.assign(window, { spanbookReader: part });
