/** Everything that can be wrong with what people write, as a closed union of facts. */
import type { BookIssue } from "./book-issue.ts";
import type { CalendarFileIssue, CalendarFileNote } from "./calendar-file-issue.ts";
import type { FileIssue } from "./file-issue.ts";
import type { RuleIssue } from "./rule-issue.ts";
import type { ShapeIssue } from "./shape-issue.ts";
import type { YamlIssue } from "./yaml-issue.ts";

export type Issue =
  | FileIssue
  | YamlIssue
  | ShapeIssue
  | RuleIssue
  | BookIssue
  | CalendarFileIssue
  | CalendarFileNote;
