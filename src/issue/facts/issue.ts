/** Everything that can be wrong with what people write, as a closed union of facts. */
import type { BookProblem } from "./book-issue.ts";
import type { FileProblem } from "./file-issue.ts";
import type { RuleProblem } from "./rule-issue.ts";
import type { ShapeProblem } from "./shape-issue.ts";
import type { YamlProblem } from "./yaml-issue.ts";

export type Problem = FileProblem | YamlProblem | ShapeProblem | RuleProblem | BookProblem;
