/** The part that reads files: loaded when there is one to read, since YAML and its checks are large. */
import "./without-eval.ts";
import { reportIssues } from "../../../../src/issue/report/report.ts";
import { sayIssue } from "../../../../src/issue/words/say-issue.ts";
import { readNotebook } from "../../../../src/notebook/read-notebook.ts";
import { readRecipe } from "../../../../src/recipe/read/read-recipe.ts";
import { readSetup } from "../../../../src/recipe/read/read-setup.ts";
import { readStripRecipe } from "../../../../src/recipe/read/read-strip-recipe.ts";
import { retyped, writtenLabels } from "../../../../src/recipe/retype.ts";
import { writeStripRecipe } from "../../../../src/recipe/write-strip-recipe.ts";
import { openedFile } from "./open-file.ts";
import type { ReaderPart } from "./reader-part.ts";

const readers = { readNotebook, readStripRecipe, readSetup, reportIssues };

const part: ReaderPart = {
  ...readers,
  openedFile: (file, known) => openedFile(file, readers, known),
  readRecipe,
  sayIssue,
  writeStripRecipe,
  writtenLabels,
  retyped,
};

Object.assign(window, { spanbookReader: part });
