/** `npm start` as an author meets it: the address, an edit that shows, a mistake told while the last good page stays. */
import { type ChildProcess, spawn } from "node:child_process";
import { rmSync, writeFileSync } from "node:fs";
import { createServer } from "node:net";
import { join } from "node:path";
import { expect, it, onTestFinished } from "vitest";
import { PROJECT, runCommand } from "../setup/run-command.ts";
import { TINY } from "../setup/tiny-content.ts";
import { scratchFolder, writeContent } from "./write-content.ts";

const PATIENCE_MS = 60_000;

/** Starts the server on a content folder and waits for the address that it prints. */
async function startOn(
  content: string,
  more: readonly string[] = [],
): Promise<{ address: string; said: () => string }> {
  const server = spawn(
    process.execPath,
    [`${PROJECT}src/build/cli/launch.mjs`, "start", `--content=${content}`, ...more],
    { cwd: PROJECT, stdio: ["ignore", "pipe", "pipe"] },
  );
  onTestFinished(() => stop(server));
  let said = "";
  const hear = (chunk: Buffer) => {
    said += chunk.toString();
  };
  server.stdout.on("data", hear);
  server.stderr.on("data", hear);
  const address = await until(
    () => /http:\/\/localhost:\d+\//.exec(said)?.[0],
    () => said,
  );
  return { address, said: () => said };
}

async function stop(server: ChildProcess): Promise<void> {
  const ended = new Promise((resolve) => server.once("exit", resolve));
  server.kill("SIGTERM");
  await ended;
}

/** What `look` finds, as soon as it finds something. */
async function until<T>(
  look: () => T | undefined | Promise<T | undefined>,
  said: () => string,
): Promise<T> {
  const end = Date.now() + PATIENCE_MS;
  while (Date.now() < end) {
    const found = await look();
    if (found !== undefined) return found;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  throw new Error(`waited in vain; the server said:\n${said()}`);
}

it("opens the book, follows edits, and tells a mistake in the page", async () => {
  const content = writeContent(TINY);
  const recipe = join(content, "patterns/halves.md");
  const { address, said } = await startOn(content);
  const page = `${address}patterns/halves/plain/index.html`;
  const shows = (words: string) =>
    until(async () => {
      const html = await fetch(page).then((answer) => answer.text());
      return html.includes(words) ? html : undefined;
    }, said);

  await shows("Halves");
  const text = TINY["patterns/halves.md"] ?? "";
  writeFileSync(recipe, text.replace("title: Halves", "title: Two halves"));
  await shows("Two halves");

  const hasWide = (isThere: boolean) =>
    until(async () => {
      const html = await fetch(`${address}patterns/index.html`).then((answer) => answer.text());
      return html.includes('data-pattern="wide"') === isThere ? html : undefined;
    }, said);
  await hasWide(true);
  rmSync(join(content, "patterns/wide.md"));
  await hasWide(false);

  writeFileSync(recipe, text.replace("count: 2", "colum: 2"));
  const html = await shows("patterns/halves.md:4:");
  expect(html).toContain("Two halves");
  expect(said()).toContain("`colum` is not a key");
  expect(said()).not.toMatch(/^\s+at /m);

  writeFileSync(recipe, text.replace("title: Halves", "title: Mended halves"));
  expect(await shows("Mended halves")).not.toContain("patterns/halves.md:4:");
});

it("opens wrong content with its report, and the book once that is mended", async () => {
  const content = writeContent({ ...TINY, "book.yaml": "titel: Tiny\n" });
  const { address, said } = await startOn(content);
  const shows = (words: string) =>
    until(async () => {
      const html = await fetch(address).then((answer) => answer.text());
      return html.includes(words) ? html : undefined;
    }, said);
  await shows("`titel` is not a key of the book");
  writeFileSync(join(content, "book.yaml"), "title: Mended\n");
  expect(await shows("<h1>Mended</h1>")).not.toContain("titel");
});

it("opens the book at the port that was asked for, and at no other where it is taken", async () => {
  const { port, close } = await takenPort();
  const content = writeContent(TINY);
  const words = ["start", `--content=${content}`, `--port=${port}`];
  expect(runCommand(words)).toEqual({
    code: 1,
    stdout: `Opening the book from ${content} …\n`,
    stderr: `Port ${port} is taken: choose another with --port=NUMBER.\n`,
  });
  await close();
  const { address } = await startOn(content, [`--port=${port}`]);
  expect(address).toBe(`http://localhost:${port}/`);
});

it.each([
  ["missing", undefined, "This folder is missing."],
  ["a file", "Dear all", "This is a file, not a folder."],
])("does not open a content folder that is %s", (_, text, sentence) => {
  const content = join(scratchFolder(), "content");
  if (text !== undefined) writeFileSync(content, text);
  const { code, stderr } = runCommand(["start", `--content=${content}`]);
  expect(code).toBe(1);
  expect(stderr.split("\n").slice(0, 2)).toEqual([content, `  ${sentence}`]);
  expect(stderr).not.toMatch(/^\s+at /m);
});

/** A port that somebody else listens at. */
async function takenPort(): Promise<{ port: number; close: () => Promise<unknown> }> {
  const server = createServer();
  await new Promise<void>((resolve) => server.listen(0, resolve));
  const address = server.address();
  if (address === null || typeof address === "string") throw new Error("no port to listen at");
  return {
    port: address.port,
    close: () => new Promise((resolve) => server.close(resolve)),
  };
}
