/** Facts into words: every problem gets one plain sentence, and a hint where one helps. */
import type { Problem } from "../problem.ts";
import type { Said } from "./said.ts";
import { sayBookProblem } from "./say-book-problem.ts";
import { sayFileProblem } from "./say-file-problem.ts";
import { sayRuleProblem } from "./say-rule-problem.ts";
import { sayShapeProblem } from "./say-shape-problem.ts";
import { sayYamlProblem } from "./say-yaml-problem.ts";

/** The words for a problem. */
export function sayProblem(problem: Problem): Said {
  switch (problem.about) {
    case "file":
      return sayFileProblem(problem);
    case "yaml":
      return sayYamlProblem(problem);
    case "shape":
      return sayShapeProblem(problem);
    case "rule":
      return sayRuleProblem(problem);
    case "book":
      return sayBookProblem(problem);
  }
}
