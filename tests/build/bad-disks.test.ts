/** Disks that are full or can only be read: one line with what to do, no trace, and the last good book as it was. */
import { spawnSync } from "node:child_process";
import { cpSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, inject, it } from "vitest";
import { PROJECT, runCommand } from "../setup/run-command.ts";
import { TINY } from "../setup/tiny-content.ts";
import { bytesIn } from "./files-in.ts";
import { smallDisk } from "./small-disk.ts";
import { scratchFolder, writeContent } from "./write-content.ts";

const OTHER = { ...TINY, "book.yaml": "title: Tiny again\nnotebooks: [plain, small]\n" };

/** The old book is all that a disk has room for, and a little. */
function bookSize(): number {
  const bytes = [...bytesIn(inject("tiny"))].reduce((sum, [, text]) => sum + text.length, 0);
  return Math.ceil((bytes * 1.5) / 1024);
}

describe("a build onto a disk", () => {
  it.each([
    ["is full", false, "the disk is full. Make room, or choose"],
    ["can only be read", true, "it lies on a disk that can only be read. Choose"],
  ])("that %s says so, and the last good book stays", (_, isReadOnly, words) => {
    const disk = smallDisk(bookSize());
    const output = join(disk.folder, "book");
    cpSync(inject("tiny"), output, { recursive: true });
    const env = isReadOnly ? disk.makeReadOnly() : disk.env;
    const before = bytesIn(disk.folder);
    const content = writeContent(OTHER);
    const call = ["build", `--content=${content}`, `--output=${output}`];
    const { code, stderr } = runCommand(call, { env });
    expect({ code, stderr }).toEqual({
      code: 1,
      stderr: `The output ${output} cannot be written: ${words} another with --output=FOLDER.\n`,
    });
    expect(readdirSync(disk.folder)).toEqual(["book"]);
    expect(bytesIn(disk.folder)).toEqual(before);
  });

  it("where only what is kept for the next build has no room makes the same book", () => {
    const { folder, env } = smallDisk(64);
    const output = join(scratchFolder(), "book");
    const words = [`${PROJECT}tests/bench/build-once.mjs`, writeContent(TINY), output, folder];
    const { status, stderr } = spawnSync(process.execPath, words, {
      encoding: "utf8",
      env: { ...process.env, ...env },
    });
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    expect(bytesIn(output)).toEqual(bytesIn(inject("tiny")));
  });
});
