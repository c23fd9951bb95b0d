/** `npm start` as an author meets it: the address, an edit that shows, a mistake told while the last good page stays. */
import { rmSync, writeFileSync } from "node:fs";
import { request } from "node:http";
import { connect, createServer } from "node:net";
import { join } from "node:path";
import { expect, it } from "vitest";
import { askProgram } from "../setup/ask-program.ts";
import { TINY } from "../setup/tiny-content.ts";
import { startOn, until } from "./serving.ts";
import { scratchFolder, writeContent } from "./write-content.ts";

it("opens the book, follows edits, and tells a mistake in the page", async () => {
  const content = writeContent(TINY);
  const recipe = join(content, "patterns/halves.md");
  const { address, said } = await startOn(["start", `--content=${content}`]);
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
  const wide = `${address}patterns/wide/plain/index.html`;
  expect((await fetch(wide)).status).toBe(200);
  rmSync(join(content, "patterns/wide.md"));
  await hasWide(false);
  expect((await fetch(wide)).status).toBe(404);

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
  const { address, said } = await startOn(["start", `--content=${content}`]);
  const shows = (words: string) =>
    until(async () => {
      const html = await fetch(address).then((answer) => answer.text());
      return html.includes(words) ? html : undefined;
    }, said);
  await shows("`titel` is not a key of the book");
  writeFileSync(join(content, "book.yaml"), "title: Mended\n");
  expect(await shows("<h1>Mended</h1>")).not.toContain("titel");
});

it("opens the book at the port that was asked for, at no other where it is taken, and at no other address", async () => {
  const { port, close } = await takenPort();
  const content = writeContent(TINY);
  const words = ["start", `--content=${content}`, `--port=${port}`];
  expect(await askProgram(words)).toEqual({
    code: 1,
    stdout: `Opening the book from ${content} …\n`,
    stderr: `Port ${port} is taken: choose another with --port=NUMBER.\n`,
  });
  await close();
  const { address } = await startOn(words);
  expect(address).toBe(`http://localhost:${port}/`);
  await expect(statusElsewhere(address)).rejects.toThrow();
  // What it cannot read it answers, and goes on.
  for (const path of BAD_ADDRESSES) expect([path, await statusOf(port, path)]).toEqual([path, 400]);
  await sendBrokenFrame(port);
  expect((await fetch(address)).status).toBe(200);
});

it.each([
  ["missing", undefined, "This folder is missing."],
  ["a file", "Dear all", "This is a file, not a folder."],
])("does not open a content folder that is %s", async (_, text, sentence) => {
  const content = join(scratchFolder(), "content");
  if (text !== undefined) writeFileSync(content, text);
  const { code, stderr } = await askProgram(["start", `--content=${content}`]);
  expect(code).toBe(1);
  expect(stderr.split("\n").slice(0, 2)).toEqual([content, `  ${sentence}`]);
  expect(stderr).not.toMatch(/^\s+at /m);
});

/** What no page is called by: bytes that are no UTF-8, ways out of the book, and no path at all. */
const BAD_ADDRESSES = [
  "/%ff",
  "/%",
  "/..%2f..%2fetc%2fpasswd",
  "/assets/..%5c..%5cpackage.json",
  "/patterns/%00",
  "//",
  "*",
];

function statusOf(port: number, path: string): Promise<number | undefined> {
  return new Promise((resolve, reject) => {
    const asked = request({ host: "127.0.0.1", port, path, method: "OPTIONS" }, (answer) => {
      answer.resume();
      resolve(answer.statusCode);
    });
    asked.on("error", reject).end();
  });
}

/** Opens the socket that pages are reloaded by, and sends a frame with all reserved bits (RFC 6455, 5.2). */
async function sendBrokenFrame(port: number): Promise<void> {
  const socket = connect(port, "127.0.0.1");
  const lines = [
    "GET / HTTP/1.1",
    `Host: localhost:${port}`,
    "Connection: Upgrade",
    "Upgrade: websocket",
    "Sec-WebSocket-Version: 13",
    "Sec-WebSocket-Key: dGhlIHNhbXBsZSBub25jZQ==",
  ];
  socket.write(`${lines.join("\r\n")}\r\n\r\n`);
  await new Promise((resolve) => socket.once("data", resolve));
  const closed = new Promise((resolve) => socket.once("close", resolve));
  socket.resume().write(Buffer.from([0xff, 0xff, 0, 0]));
  await closed;
}

/** 127.0.0.2 is this computer, too (RFC 1122, 3.2.1.3), but nothing that is bound to 127.0.0.1 is found there. */
function statusElsewhere(address: string): Promise<number> {
  return fetch(`http://127.0.0.2:${new URL(address).port}/`).then(({ status }) => status);
}

it("is found at all addresses of the computer when it is asked to", async () => {
  const words = ["start", `--content=${writeContent(TINY)}`, "--host=0.0.0.0"];
  const { address } = await startOn(words);
  expect(await statusElsewhere(address)).toBe(200);
});

it("does not open at an address that is not the computer's", async () => {
  // RFC 5737: addresses for documents, which nobody has.
  const { code, stderr } = await askProgram(["start", "--host=192.0.2.1"]);
  expect([code, stderr]).toEqual([
    1,
    "192.0.2.1 is no address of this computer: leave --host out, or take 0.0.0.0 for all of its addresses.\n",
  ]);
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
