/** What is wrong with written days, without the text and the place where it stands. */
import type { SpanProblem } from "../calendar/read-span.ts";
import type { SpanFault } from "../issue/facts/field-issue.ts";

/** The fault that a problem is. */
export function spanFault(problem: SpanProblem): SpanFault {
  switch (problem.code) {
    case "no-span":
      return { kind: "no-span", ...(problem.meant && { meant: problem.meant }) };
    case "no-such-day":
    case "no-such-week":
      return { kind: problem.code, last: problem.last };
    case "beyond-last-day":
      return { kind: "beyond-years" };
    default:
      return { kind: problem.code };
  }
}
