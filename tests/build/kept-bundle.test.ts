/** Bundles are made once for the same sources, by whoever comes first, and never half. */
import {
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { loadEngine } from "../../src/build/bundle/bundle-engine.mjs";
import { keptBundle, PROJECT } from "../../src/build/bundle/kept-bundle.mjs";

let sources = "";
let kind = "";
let made = 0;

beforeAll(() => {
  sources = mkdtempSync(join(PROJECT, "tests/build/kept-bundle-"));
  kind = sources.slice(PROJECT.length).replaceAll("/", "-");
});
afterAll(() => {
  rmSync(sources, { recursive: true });
  for (const name of ours()) rmSync(join(BUNDLES, name), { recursive: true });
});

const BUNDLES = join(PROJECT, ".cache/bundles");
const ours = () => readdirSync(BUNDLES).filter((name) => name.startsWith(kind));
const take = (make: (folder: string) => Promise<void> | void = fill) =>
  keptBundle({ kind, sources: [sources.slice(PROJECT.length)], make: async (to) => make(to) });

function fill(folder: string): void {
  made += 1;
  writeFileSync(join(folder, "bundle.txt"), readFileSync(join(sources, "one.txt")));
}

it("the engine's has no sources in it: a map beside it tells where they are", async () => {
  const { file } = await loadEngine();
  const text = readFileSync(new URL(file), "utf8");
  expect(text).toMatch(/\n\/\/# sourceMappingURL=engine\.mjs\.map\n$/);
  const map = new URL("engine.mjs.map", file);
  const { sources: named, sourcesContent } = JSON.parse(readFileSync(map, "utf8"));
  expect(sourcesContent).toBeUndefined();
  const places = named.map((one: string) => new URL(one, map).href);
  expect(places).toContain(pathToFileURL(`${PROJECT}src/build/cli/build.ts`).href);
});

describe("a bundle", () => {
  it("is made once for the same sources, and anew for others", async () => {
    writeFileSync(join(sources, "one.txt"), "one");
    const first = await take();
    expect([await take(), made]).toEqual([first, 1]);
    writeFileSync(join(sources, "one.txt"), "two");
    const second = await take();
    expect(readFileSync(join(second, "bundle.txt"), "utf8")).toBe("two");
    expect([await take(), made]).toEqual([second, 2]);
    writeFileSync(join(sources, "one.txt"), "one");
    expect([await take(), made]).toEqual([first, 2]);
  });

  it("that two make at once is whole for both", async () => {
    writeFileSync(join(sources, "one.txt"), "three");
    const [one, other] = await Promise.all([take(), take()]);
    expect(other).toBe(one);
    expect(readFileSync(join(one, "bundle.txt"), "utf8")).toBe("three");
  });

  it("that cannot be made is told, and made the next time", async () => {
    writeFileSync(join(sources, "one.txt"), "four");
    const bad = () => {
      throw new Error("bad source");
    };
    await expect(take(bad)).rejects.toThrow("bad source");
    expect(existsSync(join(await take(), "bundle.txt"))).toBe(true);
  });

  it("stays where it was just made by a clock that was set back", async () => {
    const farOff = new Date("2199-01-01");
    for (let edit = 0; edit < 7; edit += 1) {
      writeFileSync(join(sources, "one.txt"), `later ${edit}`);
      await take();
      for (const name of ours()) utimesSync(join(BUNDLES, name), farOff, farOff);
    }
    writeFileSync(join(sources, "one.txt"), "now");
    expect(readFileSync(join(await take(), "bundle.txt"), "utf8")).toBe("now");
    const longAgo = new Date("1970-01-02");
    for (const name of ours()) utimesSync(join(BUNDLES, name), longAgo, longAgo);
  });

  it("goes when six newer ones are kept", async () => {
    for (let edit = 0; edit < 8; edit += 1) {
      writeFileSync(join(sources, "one.txt"), `edit ${edit}`);
      await take();
    }
    expect(ours()).toHaveLength(6);
  });
});
