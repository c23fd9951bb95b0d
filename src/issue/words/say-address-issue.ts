/** The sentence that a page says when its address cannot be read. */
import type { AddressProblem } from "../facts/address-issue.ts";
import { harmless } from "./harmless-text.ts";
import { sayCount } from "./say-count.ts";
import { sayFieldProblem } from "./say-field-issue.ts";

/** What is wrong with the address, in one or two plain sentences. */
export function sayAddressProblem(problem: AddressProblem): string {
  switch (problem.kind) {
    case "too-long":
      return `It is longer than ${problem.limit} characters.`;
    case "garbled":
      return `“${harmless(problem.part)}” is not a key with a value.`;
    case "other-version":
      return `It is written in version “${harmless(problem.version)}”, and this book reads version ${problem.known}.`;
    case "unknown-key":
      return `It has a key “${harmless(problem.key)}” that this page does not know.`;
    case "repeated-key":
      return `It says “${harmless(problem.key)}” twice.`;
    case "missing-key":
      return `It does not say “${problem.key}”.`;
    case "unknown-pattern":
      return `What it says as “${problem.key}” names “${harmless(problem.slug.slice(0, LONGEST_SLUG))}”, which this book does not have, or has named already.`;
    case "too-many-patterns":
      return `What it says as “${problem.key}” names more than ${sayCount(problem.limit, "pattern")}.`;
    case "spoilt-text":
      return `What it says as “${problem.key}” was changed or cut off on its way.`;
    case "bad-value":
      return `What it says as “${problem.key}” will not do. ${sayFieldProblem(problem.field)}`;
  }
}

/** Longer names are none. */
const LONGEST_SLUG = 80;
