/** The demo's content as it is, and with every notebook of its folder: the book builds only some of them. */
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Content, loadContent } from "../../src/build/content/load-content.ts";
import { PROJECT } from "./run-command.ts";

let read: Promise<Content> | undefined;
let readOfBook: Promise<Content> | undefined;
let readOnAll: Promise<Content> | undefined;

/** The demo's content as it is; read once for all files of tests that share a thread. */
export function demoContent(): Promise<Content> {
  read ??= contentIn(join(PROJECT, "content"));
  return read;
}

/** What the book was built from that tests look at; its folder comes by `inject("content")`. */
export function bookContent(folder: string): Promise<Content> {
  readOfBook ??= contentIn(folder);
  return readOfBook;
}

async function contentIn(folder: string): Promise<Content> {
  const reading = await loadContent(folder);
  if (!reading.ok) throw new Error("the demo content has a problem");
  return reading.value;
}

/** The demo's content folder, copied into a new folder, with these lines of `book.yaml` in place of its own. */
export function copyDemo(folder: string, lines: Readonly<Record<string, string>>): void {
  cpSync(join(PROJECT, "content"), folder, { recursive: true });
  const own = readFileSync(join(folder, "book.yaml"), "utf8").split("\n");
  const kept = own.filter((line) => !Object.keys(lines).some((key) => line.startsWith(`${key}:`)));
  const written = Object.entries(lines).map(([key, value]) => `${key}: ${value}`);
  writeFileSync(join(folder, "book.yaml"), [...written, ...kept].join("\n"));
}

/** The demo on all notebooks, the usual one first; read once like the other. */
export function demoOnAllNotebooks(): Promise<Content> {
  readOnAll ??= onAllNotebooks();
  return readOnAll;
}

async function onAllNotebooks(): Promise<Content> {
  const folder = mkdtempSync(join(tmpdir(), "spanbook-demo-"));
  try {
    copyDemo(join(folder, "content"), { notebooks: "all" });
    return await contentIn(join(folder, "content"));
  } finally {
    rmSync(folder, { recursive: true });
  }
}
