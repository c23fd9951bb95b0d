/** Facts into words: every problem gets one plain sentence, and a hint where one helps. */
import type { Problem } from "../facts/issue.ts";
import type { Said } from "./said.ts";
import { sayBookProblem } from "./say-book-issue.ts";
import { sayFileProblem } from "./say-file-issue.ts";
import { sayRuleProblem } from "./say-rule-issue.ts";
import { sayShapeProblem } from "./say-shape-issue.ts";
import { sayYamlProblem } from "./say-yaml-issue.ts";

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
