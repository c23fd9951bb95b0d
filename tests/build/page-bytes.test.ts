/** When a page's bytes are let go of: once they are on the disk, and never before. */
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { openPageBytes } from "../../src/build/pages/page-bytes.ts";
import { scratchFolder } from "./write-content.ts";

const LONG = "é".repeat(10_000);

describe("a page as bytes", () => {
  it.each([
    ["is let go of when it is written and another comes", LONG, (bytes: Buffer) => bytes, 0],
    ["stays while it is not written", LONG, () => undefined, 20_000],
    ["stays while a part of it is written", LONG, (bytes: Buffer) => bytes.subarray(0, 9), 20_000],
    ["stays where it shares its place in memory with others", "Peas", (bytes: Buffer) => bytes, 4],
  ])("%s", (_, page, written, length) => {
    const bytesOf = openPageBytes();
    const path = join(scratchFolder(), "index.html");
    const bytes = bytesOf(page, path);
    expect(bytes.toString()).toBe(page);
    const part = written(bytes);
    if (part) writeFileSync(path, part);
    const next = bytesOf("Next", `${path}.next`);
    expect(bytes.length).toBe(length);
    expect(next.toString()).toBe("Next");
  });
});
