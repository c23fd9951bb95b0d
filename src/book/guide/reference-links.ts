/** Which group of keys a value of several parts is made of, so that the reference can lead there. */
import type { Owner } from "../../issue/facts/shape-issue.ts";
import type { Form } from "../../issue/facts/value-type.ts";

/** Undefined for a form without keys of its own. */
export const FORM_GROUPS: Readonly<Record<Form, Owner | undefined>> = {
  area: "area",
  spread: "spread",
  attempts: "attempt",
  attempt: "attempt",
  split: "split",
  tracks: "track",
  track: "track",
  gap: "gap",
  margin: "margin",
  leftover: undefined,
  labels: undefined,
  tags: undefined,
  paper: undefined,
  pitch: undefined,
  dots: undefined,
  "first-dot": undefined,
  count: undefined,
  slugs: undefined,
  slug: undefined,
  "chosen-notebooks": undefined,
  "chosen-patterns": undefined,
  address: undefined,
  printer: undefined,
};
