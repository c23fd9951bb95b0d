/** What vanishes from a content folder is told, in folders that come later, too; what nobody reads is not watched. */
import { mkdirSync, renameSync, rmSync } from "node:fs";
import { join } from "node:path";
import { expect, it, onTestFinished } from "vitest";
import { watchRemovals } from "../../src/build/cli/watch-folder.ts";
import { writeFiles } from "../setup/tiny-content.ts";
import { until } from "./serving.ts";
import { scratchFolder } from "./write-content.ts";

/** A watched folder with these files, and what was told of it so far. */
function watched(files: readonly string[]) {
  const folder = scratchFolder();
  writeFiles(folder, Object.fromEntries(files.map((path) => [path, ""])));
  const told: string[] = [];
  onTestFinished(watchRemovals(folder, (path) => told.push(path.slice(folder.length + 1))));
  const remove = (path: string) => rmSync(join(folder, path), { recursive: true });
  const isTold = (path: string) =>
    until(
      () => told.includes(path) || undefined,
      () => told.join(),
    );
  return { folder, told, remove, isTold };
}

it("tells of a file in the folder and in those in it, once they are gone for good", async () => {
  const { remove, isTold, told, folder } = watched(["book.yaml", "patterns/a.md", "patterns/b.md"]);
  remove("patterns/a.md");
  remove("patterns/b.md");
  writeFiles(folder, { "patterns/b.md": "is back" });
  await isTold("patterns/a.md");
  remove("book.yaml");
  await isTold("book.yaml");
  expect(new Set(told)).toEqual(new Set(["patterns/a.md", "book.yaml"]));
});

it("follows a folder that comes later, and one in another's place", async () => {
  const { folder, remove, isTold } = watched(["patterns/a.md"]);
  writeFiles(folder, { "strips/one.md": "" });
  mkdirSync(join(folder, "others"));
  writeFiles(folder, { "others/b.md": "" });
  renameSync(join(folder, "patterns"), join(folder, "others/patterns"));
  renameSync(join(folder, "others"), join(folder, "patterns"));
  await new Promise((resolve) => setTimeout(resolve, 500));
  remove("patterns/b.md");
  remove("strips/one.md");
  await isTold("patterns/b.md");
  await isTold("strips/one.md");
});

it("tells nothing of packages, a finished book and hidden folders", async () => {
  const unread = ["node_modules/one/a.md", "_site/index.html", "_site.x/a.md", ".cache/a/b.json"];
  const { remove, isTold, told } = watched([...unread, "patterns/a.md"]);
  for (const path of unread) remove(path.split("/")[0] ?? "");
  remove("patterns/a.md");
  await isTold("patterns/a.md");
  expect(told).toEqual(["patterns/a.md"]);
});
