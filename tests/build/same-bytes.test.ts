/** A book has the same bytes whatever was ready before, however folders list their files, and wherever it is built. */
import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { PROJECT } from "../setup/run-command.ts";
import { TINY } from "../setup/tiny-content.ts";
import { bytesIn } from "./files-in.ts";
import { scratchFolder, writeContent } from "./write-content.ts";

/** Everything that a book can have, and names whose order depends on whom one asks. */
const FULL = {
  ...TINY,
  "book.yaml":
    "title: Ilk İlk\nurl: https://example.org/ilk/\ncalendar: {region: PT, language: tr}\n",
  "notebooks/i-10.md": "---\ntitle: I\npaper: A6\npitch: 4\ndots: [24, 34]\n---\n",
  "notebooks/i-9.md": "---\ntitle: i\npaper: A6\npitch: 4\ndots: [24, 34]\n---\n",
  "patterns/zebra.md":
    "---\ntitle: Äpfel\npurpose: list\ntags: [ı, i, I]\npage: {rows: 7}\n---\nA.\n",
  "patterns/a1.md": "---\ntitle: apples\npurpose: list\ntags: [I, ä]\npage: {rows: 6}\n---\nB.\n",
  "patterns/a-1.md": "---\ntitle: Zebra\npurpose: week\npage: {columns: 5}\n---\nC.\n",
  "patterns/month.md":
    "---\ntitle: Ay\npurpose: month\ndates: month\npage: {rows: {tracks: [{label: '{month} {year}', steps: 2}, {columns: {count: weekdays, each: {label: '{weekday}'}}, steps: 1}, {repeat: weeks, columns: {count: days, each: {label: '{day}'}}}]}}\n---\nD.\n",
  "patterns/week.md":
    "---\ntitle: Hafta\npurpose: week\ndates: week\npage: {rows: {count: days, each: {label: '{weekday} {day} {month}, {week}'}}}\n---\nE.\n",
  "strips/days.md": "---\ntitle: Days\nacross: [month, week]\ndown: [month]\n---\n",
  "strips/two.md": "---\ntitle: Two\nacross: [halves, a-1]\ndown: [zebra, a1]\n---\n",
  "strips/one.md": "---\ntitle: One\nacross: [a-1]\nmake: fold\n---\n",
};

/** What a disk does that lists files the other way round. */
const TURNED_ROUND = `
  import fs from "node:fs";
  import { syncBuiltinESMExports } from "node:module";
  const { readdirSync, readdir, promises } = fs;
  const { readdir: readdirSoon } = promises;
  fs.readdirSync = (...given) => readdirSync(...given).reverse();
  fs.promises.readdir = async (...given) => (await readdirSoon(...given)).reverse();
  fs.readdir = (...given) => {
    const tell = given.pop();
    readdir(...given, (error, found) => tell(error, found && found.reverse()));
  };
  syncBuiltinESMExports();
`;

/** Two machines that never have the same day and month, nor call them by the same names. */
const HERE = { TZ: "Pacific/Pago_Pago", LANG: "C", LC_ALL: "C" };
const ELSEWHERE = { TZ: "Pacific/Kiritimati", LANG: "tr_TR.UTF-8", LC_ALL: "tr_TR.UTF-8" };
/** As a large book is written. */
const IN_PARTS = { PAGES_AT_ONCE: "3" };

interface Circumstances {
  readonly cache: string;
  readonly env?: Readonly<Record<string, string>>;
  readonly before?: readonly string[];
}

/** The book's bytes, and what the build said. */
function built({ cache, env = {}, before = [] }: Circumstances) {
  const output = join(scratchFolder(), "book");
  const words = [`${PROJECT}tests/bench/build-once.mjs`, writeContent(FULL), output, cache];
  const { status, stdout, stderr } = spawnSync(process.execPath, [...before, ...words], {
    encoding: "utf8",
    env: { ...process.env, ...env },
  });
  expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
  return { bytes: bytesIn(output), said: stdout };
}

const differing = (one: ReadonlyMap<string, unknown>, other: ReadonlyMap<string, unknown>) =>
  [...new Set([...one.keys(), ...other.keys()])].filter(
    (path) => one.get(path) !== other.get(path),
  );

describe("the bytes of a book", () => {
  it("are the same with nothing ready, with all ready, and in parts on a machine that differs in all else", () => {
    const cache = scratchFolder();
    const cold = built({ cache, env: HERE });
    expect(cold.said).toMatch(/; 0 of \d+ drawings were ready.*; 0 of \d+ PDF files were ready/);
    const warm = built({ cache, env: HERE });
    expect(warm.said).toMatch(/; (\d+) of \1 drawings were ready.*; (\d+) of \2 PDF files were/);
    const elsewhere = built({
      cache: scratchFolder(),
      env: { ...ELSEWHERE, ...IN_PARTS, NODE_ENV: "" },
      before: ["--import", `data:text/javascript,${encodeURIComponent(TURNED_ROUND)}`],
    });
    expect(cold.bytes.size).toBeGreaterThan(150);
    expect(cold.bytes.has("feed.xml")).toBe(true);
    expect(differing(cold.bytes, warm.bytes)).toEqual([]);
    expect(differing(cold.bytes, elsewhere.bytes)).toEqual([]);
    const months = String(cold.bytes.get("patterns/month/plain/index.html"));
    expect(months).toContain("Does my year fit?");
  });
});
