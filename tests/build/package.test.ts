/** The npm package, unpacked into an empty folder beside nothing but its runtime dependencies: a book is begun, checked, shown and built with it. */
import { execFileSync, spawnSync } from "node:child_process";
import {
  chmodSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { filesIn } from "../../src/build/output/files-in.ts";
import { askProgram } from "../setup/ask-program.ts";
import { PROJECT, runCommand } from "../setup/run-command.ts";
import { writeFiles } from "../setup/tiny-content.ts";
import { bytesIn } from "./files-in.ts";
import { startOn, until } from "./serving.ts";

const { dependencies, version } = JSON.parse(readFileSync(`${PROJECT}package.json`, "utf8"));

const folder = mkdtempSync(join(tmpdir(), "spanbook-package-"));
const modules = join(folder, "node_modules");
const unpacked = join(modules, "spanbook");
/** As npm links what a package has in `bin`. */
const launch = join(modules, ".bin/spanbook");
const book = join(folder, "my-book");
const packed: { bytes: number; files: ReadonlyMap<string, string> } = {
  bytes: 0,
  files: new Map(),
};

/** What npm does for `npm install`, but that no dependency is fetched: each is the project's own. */
beforeAll(() => {
  execFileSync("npm", ["pack", "--silent", `--pack-destination=${folder}`], { cwd: PROJECT });
  const [file = ""] = readdirSync(folder).filter((name) => name.endsWith(".tgz"));
  packed.bytes = statSync(join(folder, file)).size;
  mkdirSync(unpacked, { recursive: true });
  const untar = ["-xzf", join(folder, file), "-C", unpacked, "--strip-components=1"];
  execFileSync("tar", untar);
  for (const name of Object.keys(dependencies)) {
    mkdirSync(dirname(join(modules, name)), { recursive: true });
    symlinkSync(`${PROJECT}node_modules/${name}`, join(modules, name));
  }
  mkdirSync(dirname(launch));
  symlinkSync("../spanbook/src/build/cli/launch.mjs", launch);
  chmodSync(launch, 0o755);
  packed.files = bytesIn(unpacked);
});
afterAll(() => rmSync(folder, { recursive: true }));

const spanbook = (words: readonly string[], cwd = folder) => runCommand(words, { cwd, launch });

/** A script of the new book's own `package.json`, as somebody runs it. */
function npm(...words: readonly string[]) {
  const { INIT_CWD: _, ...env } = process.env;
  const { status, stdout, stderr } = spawnSync("npm", ["--silent", ...words], {
    cwd: book,
    env,
    encoding: "utf8",
  });
  return { code: status, stdout, stderr };
}

describe("the package", () => {
  it("has what is needed, no sources, and at most 3 MiB packed and 8 MiB unpacked", () => {
    const names = [...packed.files.keys()];
    const size = names.reduce((sum, name) => sum + (packed.files.get(name)?.length ?? 0), 0);
    expect(names).toEqual(
      expect.arrayContaining(["LICENSE", "README.md", "dist/assets/licences.txt"]),
    );
    expect(
      names.filter((name) => /(?<!\.d)\.ts$|\.css$|^tests/.test(name) && !isBuilt(name)),
    ).toEqual([]);
    expect(packed.bytes).toBeLessThan(3 << 20);
    expect(size).toBeLessThan(8 << 20);
  });

  it("depends on what its programs import, and on nothing else", () => {
    const programs = ["dist/engine/engine.mjs", "dist/exports/exports.mjs", ".eleventy.js"];
    const imports = programs.flatMap((name) => [
      ...(packed.files.get(name) ?? "").matchAll(
        /^(?:import|export) .*from "([^"]+)"|\bimport\("([^"]+)"\)/gm,
      ),
    ]);
    const targets = imports.map(([, from, dynamic]) => from ?? dynamic ?? "");
    const packages = targets.flatMap((one) => /^(?!node:)(?:@[^/]+\/)?[\w.-]+/.exec(one) ?? []);
    const named = packages.filter((name) => !name.startsWith("."));
    expect([...new Set(named)].sort()).toEqual(Object.keys(dependencies).sort());
  });

  it("says its version, and what it can do", () => {
    expect(spanbook(["--version"])).toEqual({ code: 0, stdout: `${version}\n`, stderr: "" });
    const { code, stdout } = spanbook(["--help"]);
    expect(code).toBe(0);
    expect(stdout).toMatch(/^ {2}new FOLDER .*\n {2}start .*\n {2}check .*\n {2}build /m);
  });
});

function isBuilt(name: string): boolean {
  return name.startsWith("dist/assets/");
}

const FEW =
  "url: https://example.org/ours/\npatterns: [our-list, two-row-week]\nstrips: [our-strip]\n";

describe("a book that is begun with it", () => {
  it("has one file of each kind, and says what to do next", () => {
    const { code, stdout, stderr } = spanbook(["new", "my-book"]);
    expect({ code, stderr }).toEqual({ code: 0, stderr: "" });
    expect(stdout).toMatch(
      /^Beginning a book in my-book …\nmy-book has .*\n.*cd my-book, then npm start/,
    );
    expect(filesIn(book).sort()).toEqual([
      ".gitignore",
      "book.yaml",
      "notebooks/our-notebook.md",
      "package.json",
      "patterns/our-list.md",
      "setups/next-month.md",
      "strips/our-strip.md",
    ]);
    const { scripts } = JSON.parse(readFileSync(join(book, "package.json"), "utf8"));
    expect(Object.keys(scripts)).toEqual(["start", "check", "build"]);
  });

  it("is well as it is", () => {
    const { code, stdout, stderr } = npm("run", "check");
    expect({ code, stderr }).toEqual({ code: 0, stderr: "" });
    expect(stdout).toMatch(
      /^Checking this folder …\nAll is well: \d+ patterns, 1 notebook, 2 strips and 1 set-up\.\n$/,
    );
  });

  it("is shown, follows an edit, and takes nothing that it keeps itself for one", async () => {
    // All that it has was checked; a few patterns are shown and built as all are.
    const head = readFileSync(join(book, "book.yaml"), "utf8");
    writeFiles(book, { "book.yaml": head + FEW });
    const { address, said } = await startOn(["start"], book, launch);
    const page = () => fetch(`${address}patterns/index.html`).then((answer) => answer.text());
    expect(await page()).toContain("Our list");
    const path = "patterns/our-list.md";
    const text = readFileSync(join(book, path), "utf8");
    writeFiles(book, { "_site.tried/page.html": "", ".git/HEAD": "ref: refs/heads/main\n" });
    writeFiles(book, { [path]: text.replace("title: Our list", "title: The list") });
    await until(async () => ((await page()).includes("The list") ? true : undefined), said);
    writeFiles(book, { [path]: text });
    await until(async () => ((await page()).includes("The list") ? undefined : true), said);
    const edited = [...said().matchAll(/^\[11ty\] File (?:changed|added|deleted): (.*)$/gm)];
    expect([...new Set(edited.map(([, file]) => file))]).toEqual([join(book, path)]);
    rmSync(join(book, "_site.tried"), { recursive: true });
    rmSync(join(book, ".git"), { recursive: true });
  });

  it("is built where it lies, with the same bytes as by the project itself", async () => {
    const { code, stdout, stderr } = npm("run", "build");
    expect({ code, stderr }).toEqual({ code: 0, stderr: "" });
    expect(stdout).toMatch(/^Building the book from this folder into _site …\n.*_site: \d+ pages/);
    const other = join(folder, "by-the-project");
    await askProgram(["build", `--content=${book}`, `--output=${other}`]);
    const [ours, theirs] = [bytesIn(join(book, "_site")), bytesIn(other)];
    expect(ours.has("setups/next-month/our-notebook/pages.pdf")).toBe(true);
    expect([...ours.keys()]).toEqual([...theirs.keys()]);
    expect([...ours.keys()].filter((path) => ours.get(path) !== theirs.get(path))).toEqual([]);
    expect(npm("run", "build").stdout).toContain("nothing has changed since it was built");
  });

  it("keeps what it made in its own folder, and none in the package", () => {
    expect(readdirSync(join(book, ".cache")).sort()).toEqual(["artifacts", "served"]);
    expect(bytesIn(unpacked)).toEqual(packed.files);
  });
});

describe("a folder without a book", () => {
  it("is not taken for one", () => {
    expect(spanbook(["start"], modules)).toMatchObject({
      code: 1,
      stderr:
        "There is no book.yaml in this folder: go to a book's folder, or name it by --content=FOLDER. `spanbook new my-book` begins one.\n",
    });
  });
});

describe("a folder that cannot be a new book", () => {
  it.each([
    ["my-book", "my-book is there and not empty: choose another name, or empty it first."],
    ["letter.txt", "letter.txt is a file, or lies in one: choose another name."],
    ["letter.txt/book", "letter.txt/book is a file, or lies in one: choose another name."],
  ])("%s is refused and left alone", async (name, why) => {
    const tried = join(folder, "tried");
    writeFiles(tried, { "letter.txt": "Dear all", "my-book/book.yaml": "title: Ours\n" });
    const before = bytesIn(tried);
    const refused = await askProgram(["new", name], { cwd: tried });
    expect(refused).toMatchObject({ code: 1, stderr: `${why}\n` });
    expect(bytesIn(tried)).toEqual(before);
  });
});

/** As much of the engine as fits in a few lines; types and values must both be there. */
const USE = `import { divide, isShortage, planJson, planPattern, planStrip, readNotebook, readRecipe, readStripRecipe, stripJson, UNDATED } from "spanbook";
const thirds = divide({ length: 26, tracks: Array.from({ length: 3 }, () => ({ kind: "share", weight: 100, min: 1, max: Infinity })), gap: { min: 1, max: 1 } });
const notebook = readNotebook({ path: "notebooks/a5.md", text: "---\\ntitle: A5\\npaper: A5\\npitch: 5\\ndots: [26, 38]\\n---\\n" });
const recipe = readRecipe({ path: "patterns/halves.md", text: "---\\ntitle: Halves\\npurpose: page\\npage: {columns: 2}\\n---\\n" });
const strip = readStripRecipe({ path: "strips/one.md", text: "---\\ntitle: One\\nacross: [halves]\\n---\\n" });
if (!notebook.ok || !recipe.ok || !strip.ok || isShortage(thirds)) throw new Error("not read");
const plan = JSON.parse(planJson(planPattern(recipe.value, notebook.value)));
const { sides } = stripJson(planStrip({ recipe: strip.value, notebook: notebook.value, recipeOf: () => recipe.value, when: UNDATED }));
console.log(JSON.stringify({ thirds: thirds.sizes, halves: plan.pages[0].splits[0].sizes, marks: sides[0]?.lanes[0]?.runs[0]?.marks }));
`;

describe("the engine for other programs", () => {
  it("works a division, a plan and a strip out", () => {
    writeFiles(folder, { "use.mjs": USE });
    const { stdout, stderr } = spawnSync(process.execPath, ["use.mjs"], {
      cwd: folder,
      encoding: "utf8",
    });
    expect(stderr).toBe("");
    expect(JSON.parse(stdout)).toEqual({
      thirds: [8, 8, 8],
      halves: [13, 13],
      marks: [0, 13, 26],
    });
  });

  it("tells TypeScript where it is used wrongly, and nothing where rightly", () => {
    const config = {
      compilerOptions: { strict: true, noEmit: true, module: "nodenext", types: [] },
      files: ["right.mts", "wrong.mts"],
    };
    writeFiles(folder, {
      "right.mts": USE,
      "wrong.mts": `${USE}const wrong: string = plan ?? divide({ length: "26" });\n`,
      "tsconfig.json": JSON.stringify(config),
    });
    const tsc = `${PROJECT}node_modules/typescript/bin/tsc`;
    const { status, stdout } = spawnSync(process.execPath, [tsc, "-p", folder], {
      cwd: folder,
      encoding: "utf8",
    });
    const told = [...stdout.matchAll(/^(\S+)\(.*error (TS\d+):/gm)].map(([, ...at]) =>
      at.join(" "),
    );
    expect(status).not.toBe(0);
    expect(told.length).toBeGreaterThan(0);
    expect(new Set(told)).toEqual(new Set(["wrong.mts TS2322"]));
  });
});
