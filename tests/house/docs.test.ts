/** What README, DEVELOPERS and the guide say can be done: every command is there, and something runs it. */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";

const ROOT = fileURLToPath(new URL("../../", import.meta.url));
const read = (path: string) => readFileSync(ROOT + path, "utf8");

/** What runs each command: the gate, a test, or a person who measures. */
const RUN_BY: Readonly<Record<string, string>> = {
  "npm ci": ".ci/run",
  "npm test": ".ci/run",
  "npm run types": ".ci/run",
  "npm run lint": ".ci/run",
  "npm run unused": ".ci/run",
  "npm run check": ".ci/run",
  "npm start": "tests/build/start.test.ts",
  "npm run build": "tests/build/build.test.ts",
  "npm run build -- --content=content --output=_site": "tests/build/build.test.ts",
  "npm start -- --host=0.0.0.0": "tests/build/start.test.ts",
  "npm start -- --content=my-book --with=content/general": "tests/build/new-book.test.ts",
  "npm run build -- --content=my-book --with=content/general --output=my-site":
    "tests/build/new-book.test.ts",
  "npm run check -- --format=lines --watch": "tests/build/check.test.ts",
  "npm pack": "tests/build/package.test.ts",
  // By hand as npm does it, but for the network.
  "npm install --global ./spanbook-0.1.0.tgz": "tests/build/package.test.ts",
  "spanbook new my-book": "tests/build/package.test.ts",
  "cd my-book": "tests/build/package.test.ts",
};

/** The commands of all `sh` fences. */
function commandsIn(text: string): readonly string[] {
  return [...text.matchAll(/^```sh\n([\s\S]*?)^```/gm)]
    .flatMap(([, lines = ""]) => lines.split("\n"))
    .flatMap((line) => line.split("&&"))
    .map((command) => command.trim())
    .filter((command) => command !== "");
}

describe.each(["README.md", "DEVELOPERS.md"])("%s", (path) => {
  const text = read(path);

  it("shows only commands that something runs", () => {
    const commands = commandsIn(text);
    expect(commands.length).toBeGreaterThan(3);
    expect(commands.filter((command) => !(command in RUN_BY))).toEqual([]);
  });

  it("names only scripts and files that are there", () => {
    const { scripts } = JSON.parse(read("package.json"));
    const named = [...text.matchAll(/npm run ([a-z]+)/g)].map(([, script = ""]) => script);
    expect(named.filter((script) => !(script in scripts))).toEqual([]);
    const files = [
      ...text.matchAll(/`((?:src|tests|site|layouts|content)\/[\w./-]*)`|\]\((?!http)([^)#]+)\)/g),
    ];
    const paths = files.map(([, code, link]) => code ?? link ?? "");
    expect(paths.filter((file) => !existsSync(ROOT + file))).toEqual([]);
  });
});

it("the guide shows only commands that something runs", () => {
  const chapters = readdirSync(`${ROOT}site/guide`).filter((name) => name.endsWith(".md"));
  const commands = chapters.flatMap((name) => commandsIn(read(`site/guide/${name}`)));
  expect(commands.length).toBeGreaterThan(3);
  expect(commands.filter((command) => !(command in RUN_BY))).toEqual([]);
});

it("the guide has one chapter at each place: of two, the dates of their files would tell which comes first", () => {
  const files = readdirSync(`${ROOT}site/guide`).filter((name) => /\.(md|njk)$/.test(name));
  const places = files.flatMap(
    (name) => /^order: (\d+)$/m.exec(read(`site/guide/${name}`))?.[1] ?? [],
  );
  expect(places.map(Number).sort((one, other) => one - other)).toEqual(
    Array.from({ length: files.length - 1 }, (_, index) => index + 1),
  );
});

it("the gate runs what it is said to run", () => {
  const gate = read(".ci/run");
  const said = Object.entries(RUN_BY).filter(([, by]) => by === ".ci/run");
  expect(said.filter(([command]) => !gate.includes(command))).toEqual([]);
});
