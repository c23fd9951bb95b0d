/** Which folder may import which: the house's one-way rule, as a check over files given as text. */
import { posix } from "node:path";

/** The folders of the engine, lowest first: each may import itself and those before it. */
const ORDER = [
  "src/measure",
  "src/divide",
  "src/problem",
  "src/written",
  "src/notebook",
  "src/recipe",
  "src/plan",
  "src/strip",
  "src/draw",
  "src/print",
];

/** The doors may import everything. */
const DOORS = ["src/book", "site"];

/** Packages that only the named folders may use. */
const PACKAGES: readonly { readonly name: RegExp; readonly folders: readonly string[] }[] = [
  { name: /^node:|^svgdom$|^esbuild$|^@11ty\//, folders: ["src/book"] },
  { name: /^@svgdotjs\//, folders: ["src/draw", "src/book", "site"] },
  { name: /^(yaml|zod)/, folders: ["src/written", "src/notebook", "src/recipe", "src/book"] },
];

/** What is wrong with the imports of some files: `from: sentence`, sorted. */
export function importIssues(files: ReadonlyMap<string, string>): readonly string[] {
  const issues = [...files].flatMap(([path, text]) =>
    importsOf(text).flatMap((target) => {
      const wrong = target.startsWith(".")
        ? wrongFolder(path, posix.join(posix.dirname(path), target), files)
        : wrongPackage(path, target);
      return wrong ? [`${path}: ${wrong}`] : [];
    }),
  );
  return [...issues, ...cycles(files)].sort();
}

/** The targets of a file's imports and re-exports, types included. */
export function importsOf(text: string): readonly string[] {
  const found = text.matchAll(
    /^\s*(?:import|export)\b[^"';]*?from\s*["']([^"']+)["']|^\s*import\s*["']([^"']+)["']|\bimport\(\s*["']([^"']+)["']/gm,
  );
  return [...found].map(([, from, bare, dynamic]) => from ?? bare ?? dynamic ?? "");
}

function wrongFolder(
  path: string,
  target: string,
  files: ReadonlyMap<string, string>,
): string | undefined {
  const from = folderOf(path);
  const to = folderOf(target);
  if (!files.has(target)) return `imports ${target}, which does not exist`;
  if (DOORS.includes(from)) return undefined;
  if (!ORDER.includes(from)) return `${from} has no place in the house`;
  const isBelow = ORDER.includes(to) && ORDER.indexOf(to) <= ORDER.indexOf(from);
  return isBelow ? undefined : `${from} may not import ${to}`;
}

function wrongPackage(path: string, target: string): string | undefined {
  const rule = PACKAGES.find(({ name }) => name.test(target));
  if (!rule || rule.folders.includes(folderOf(path))) return undefined;
  return `${folderOf(path)} may not import ${target}`;
}

function folderOf(path: string): string {
  return path.startsWith("src/")
    ? path.split("/").slice(0, 2).join("/")
    : (path.split("/")[0] ?? "");
}

/** Each file that can reach itself, once, by the first way found. */
function cycles(files: ReadonlyMap<string, string>): readonly string[] {
  const done = new Set<string>();
  const found: string[] = [];
  const visit = (path: string, trail: readonly string[]): void => {
    if (trail.includes(path))
      found.push(
        `${path}: imports itself by way of ${trail.slice(trail.indexOf(path) + 1).join(", ")}`,
      );
    if (done.has(path) || trail.includes(path)) return;
    for (const target of importsOf(files.get(path) ?? "")) {
      const next = posix.join(posix.dirname(path), target);
      if (target.startsWith(".") && files.has(next)) visit(next, [...trail, path]);
    }
    done.add(path);
  };
  for (const path of [...files.keys()].sort()) visit(path, []);
  return found;
}
