/** Writes plain data between braces and brackets, as YAML reads it back. */
import { writeFlowText } from "./quote-text.ts";

/** What a file may hold behind a key: the same as YAML and as JSON. */
export type FlowValue =
  | string
  | number
  | readonly FlowValue[]
  | { readonly [key: string]: FlowValue };

/** One line, such as `{count: 3, gap: 1}`. */
export function writeFlow(value: FlowValue): string {
  if (typeof value === "string") return writeFlowText(value);
  if (typeof value === "number") return `${value}`;
  if (isList(value)) return `[${value.map(writeFlow).join(", ")}]`;
  return `{${Object.entries(value)
    .map(([key, one]) => `${key}: ${writeFlow(one)}`)
    .join(", ")}}`;
}

function isList(value: FlowValue): value is readonly FlowValue[] {
  return Array.isArray(value);
}
