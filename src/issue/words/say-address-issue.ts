/** The sentence that a page says when its address cannot be read. */
import type { AddressIssue } from "../facts/address-issue.ts";
import { harmless } from "./harmless-text.ts";
import { sayCount } from "./say-count.ts";
import { sayFieldIssue } from "./say-field-issue.ts";

/** What is wrong with the address, in one or two plain sentences. */
export function sayAddressIssue(issue: AddressIssue): string {
  switch (issue.kind) {
    case "too-long":
      return `It is longer than ${issue.limit} characters.`;
    case "garbled":
      return `“${harmless(issue.part)}” must be a key and a value, such as v=1.`;
    case "other-version":
      return `It is written in version “${harmless(issue.version)}”, and this book reads version ${issue.known}.`;
    case "unknown-key":
      return `It has a key “${harmless(issue.key)}” that this page does not know.`;
    case "repeated-key":
      return `It says “${harmless(issue.key)}” twice.`;
    case "missing-key":
      return `It does not say “${issue.key}”.`;
    case "unknown-pattern":
      return `The value of “${issue.key}” names “${harmless(issue.slug.slice(0, LONGEST_SLUG))}”, which is not in this book, or is named twice.`;
    case "not-kept":
      return `The layout “${harmless(issue.slug)}” is not kept on this device.`;
    case "too-many-patterns":
      return `The value of “${issue.key}” names more than ${sayCount(issue.limit, "pattern")}.`;
    case "spoilt-text":
      return `The value of “${issue.key}” was changed or cut off on its way.`;
    case "bad-value":
      return `The value of “${issue.key}” is not valid. ${sayFieldIssue(issue.field)}`;
  }
}

/** Longer names are none. */
const LONGEST_SLUG = 80;
