import { describe, expect, it, vi } from "vitest";
import type { Issue } from "../../src/issue/facts/issue.ts";
import { noteUnknownKeys } from "../../src/source/schema/take-map.ts";
import type { SourceMapping } from "../../src/source/tree.ts";

const AT = { file: "patterns/many.md", line: 1, column: 1, width: 1 };
const GROUP = { owner: "area", allowed: ["rows"], grammar: {} } as const;

/** Keys with nothing behind them. */
function keysOf(count: number): SourceMapping {
  const entries = Array.from({ length: count }, (_, index) => ({
    key: `z${index}`,
    keyAt: AT,
    value: { kind: "scalar", value: null, source: "", at: AT } as const,
  }));
  return { kind: "map", entries, at: AT };
}

/** How often the keys of a group are read while its unknown ones are noted. */
function readsOf(count: number): number {
  const map = keysOf(count);
  const read = vi.fn();
  const entries = map.entries.map((entry) => ({
    ...entry,
    get key() {
      read();
      return entry.key;
    },
  }));
  const issues: Issue[] = [];
  noteUnknownKeys({ ...map, entries }, GROUP, (issue) => issues.push(issue));
  expect(issues).toHaveLength(count);
  return read.mock.calls.length;
}

describe("unknown keys", () => {
  it("take twice as much reading where they are twice as many", () => {
    expect(readsOf(400)).toBe(2 * readsOf(200));
  });
});
