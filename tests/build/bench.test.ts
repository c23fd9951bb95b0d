/** What `npm run bench` compares a build with: both bare builds write the pages of the finished book again, byte for byte. */
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, inject, it } from "vitest";
import { pagesIn } from "./files-in.ts";

const BENCH = new URL("../bench/", import.meta.url).pathname;
const scratch = mkdtempSync(join(tmpdir(), "spanbook-bare-"));

afterAll(() => rmSync(scratch, { recursive: true }));

describe.each(["stock-once.mjs", "bare-once.mjs"])("%s", (script) => {
  it("writes all pages of a book, and tells what that took", () => {
    const [finished, output] = [inject("tiny"), join(scratch, script)];
    const said = execFileSync(process.execPath, [join(BENCH, script), finished, output], {
      encoding: "utf8",
    });
    expect(JSON.parse(said.trim().split("\n").at(-1) ?? "")).toEqual({
      wall: expect.any(Number),
      processor: expect.any(Number),
      memory: expect.any(Number),
    });
    expect(pagesIn(output)).toEqual(pagesIn(finished));
    expect(pagesIn(output).size).toBeGreaterThan(20);
  });
});
