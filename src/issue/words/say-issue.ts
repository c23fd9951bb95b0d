/** Facts into words: every problem gets one plain sentence, and a hint where one helps. */
import type { Issue } from "../facts/issue.ts";
import type { Said } from "./said.ts";
import { sayBookIssue } from "./say-book-issue.ts";
import { sayCalendarFile } from "./say-calendar-file-issue.ts";
import { sayFileIssue } from "./say-file-issue.ts";
import { sayRuleIssue } from "./say-rule-issue.ts";
import { sayShapeIssue } from "./say-shape-issue.ts";
import { sayYamlIssue } from "./say-yaml-issue.ts";

/** The words for a problem. */
export function sayIssue(issue: Issue): Said {
  switch (issue.about) {
    case "file":
      return sayFileIssue(issue);
    case "yaml":
      return sayYamlIssue(issue);
    case "shape":
      return sayShapeIssue(issue);
    case "rule":
      return sayRuleIssue(issue);
    case "book":
      return sayBookIssue(issue);
    case "calendar-file":
      return sayCalendarFile(issue);
  }
}
