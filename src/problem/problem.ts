/** Everything that can be wrong with what people write, as a closed union of facts. */
import type { BookProblem } from "./book-problem.ts";
import type { FileProblem } from "./file-problem.ts";
import type { RuleProblem } from "./rule-problem.ts";
import type { ShapeProblem } from "./shape-problem.ts";
import type { YamlProblem } from "./yaml-problem.ts";

export type Problem = FileProblem | YamlProblem | ShapeProblem | RuleProblem | BookProblem;
