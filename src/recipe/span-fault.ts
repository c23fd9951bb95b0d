/** What is wrong with written days, as the fact that a sentence is made from. */
import type { SpanProblem } from "../calendar/read-span.ts";
import type { SpanFault } from "../issue/facts/field-issue.ts";

/** The fact behind a problem of reading a span. */
export function spanFaultOf(problem: SpanProblem): SpanFault {
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
