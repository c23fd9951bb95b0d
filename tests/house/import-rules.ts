/** Which folder may import which: the house's one-way rule, as a check over files given as text. */
import { posix } from "node:path";
import { weightIssues } from "./page-weight.ts";
import { sentenceIssues } from "./sentences.ts";

/** Lowest rank first: a folder may import itself and what has a lower rank. Folders of one rank do not see each other. */
export const RANKS: readonly (readonly string[])[] = [
  ["src/measure"],
  ["src/divide", "src/photo"],
  ["src/issue"],
  ["src/source", "src/calendar"],
  ["src/events"],
  ["src/notebook"],
  ["src/recipe"],
  ["src/plan"],
  ["src/strip"],
  ["src/setup", "src/draw"],
  ["src/print"],
  ["src/view"],
  ["src/build", "site"],
];

/**
 * The floors inside a folder, lowest first: a subfolder named here may import those before it, and "." stands for
 * the folder's own files. What is not named is bound by its folder's rank alone.
 */
export const FLOORS: Readonly<Record<string, readonly (readonly string[])[]>> = {
  "src/issue": [["facts"], ["words"], ["report"]],
  "src/print": [["."], ["sheets"], ["pdf"]],
  "src/build": [
    ["bundle", "content"],
    ["artifacts"],
    ["output"],
    ["web"],
    ["pages"],
    ["cli"],
    ["."],
  ],
  "site/script": [
    ["ui", "device"],
    ["lazy", "offline"],
    ["app"],
    ["draw-along"],
    ["home", "fit", "recipe", "gallery", "measure", "notebook", "strip", "setup", "kept", "words"],
  ],
};

/** Packages that only the named folders may use. */
const PACKAGES: readonly { readonly name: RegExp; readonly folders: readonly string[] }[] = [
  { name: /^@11ty\//, folders: ["src/build/pages"] },
  { name: /^esbuild$/, folders: ["src/build/bundle", "src/build/artifacts"] },
  { name: /^node:|^markdown-it$|^@resvg\//, folders: ["src/build"] },
  { name: /^svgdom$/, folders: ["src/build/artifacts/make"] },
  { name: /^@svgdotjs\//, folders: ["src/draw/svg", "src/build/artifacts", "site/script"] },
  {
    name: /^(yaml|zod)/,
    folders: ["src/source", "src/notebook", "src/recipe", "site/script/lazy/reader"],
  },
  { name: /^(pdfkit|fontkit)/, folders: ["src/print/pdf", "site/script/lazy/print"] },
  { name: /^ical\.js$/, folders: ["src/events"] },
  { name: /^bidi-js$/, folders: ["src/print/pdf"] },
  { name: /^(devalue|github-slugger)$/, folders: ["src/build/pages"] },
  { name: /^get-east-asian-width$/, folders: ["src/issue/report"] },
  { name: /^@(codemirror|lezer)\//, folders: ["site/script/lazy/editor"] },
];

/** Names of the web's own that only one place may use, since what it keeps must have one owner. */
const NAMES: readonly {
  readonly name: RegExp;
  readonly within: string;
  readonly owner: RegExp;
  readonly what: string;
}[] = [
  {
    name: /\blocalStorage\b/,
    within: "site/script/",
    owner: /^site\/script\/device\//,
    what: "localStorage",
  },
  {
    name: /\b(push|replace)State\b|"(hashchange|popstate)"|\blocation\.hash\s*=[^=]/,
    within: "site/script/",
    owner: /^site\/script\/app\/bind-address\.ts$/,
    what: "the address",
  },
  {
    name: /\bcreateHash\b/,
    within: "src/",
    owner: /^src\/build\/(artifacts\/cache\/|bundle\/|pages\/template-filters\.ts$)/,
    what: "createHash",
  },
  {
    name: /\blocalStorage\b|\bglobalThis\b|\bDate\.now\b|\bnew Date\b|\bMath\.random\b|\bperformance\.now\b|\bprocess\./,
    within: "src/",
    owner: /^src\/(build|draw\/svg|print)\//,
    what: "the surroundings of a program",
  },
];

/** What is wrong with the imports of some files: `from: sentence`, sorted. */
export function importIssues(files: ReadonlyMap<string, string>): readonly string[] {
  const issues = [...files].flatMap(([path, text]) => [
    ...importsOf(text).flatMap((target) => {
      const wrong = target.startsWith(".")
        ? wrongFolder(path, posix.join(posix.dirname(path), target), files)
        : wrongPackage(path, target);
      return wrong ? [`${path}: ${wrong}`] : [];
    }),
    ...wrongNames(path, text),
  ]);
  return [...issues, ...cycles(files), ...weightIssues(files), ...sentenceIssues(files)].sort();
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
  const [from, to] = [folderOf(path), folderOf(target)];
  if (!files.has(target)) return `imports ${target}, which does not exist`;
  const rank = rankOf(from);
  if (rank < 0) return `${from} has no place in the house`;
  if (from !== to) return rankOf(to) < rank ? undefined : `${from} may not import ${to}`;
  return wrongFloor(path, target);
}

function wrongFloor(path: string, target: string): string | undefined {
  for (const [folder, floors] of Object.entries(FLOORS)) {
    if (!path.startsWith(`${folder}/`) || !target.startsWith(`${folder}/`)) continue;
    const [from, to] = [roomIn(folder, path), roomIn(folder, target)];
    const floorOf = (room: string) => floors.findIndex((rooms) => rooms.includes(room));
    if (from === to || floorOf(from) < 0 || floorOf(to) < 0) continue;
    if (floorOf(to) < floorOf(from)) continue;
    return `${folder}/${from} may not import ${folder}/${to}`;
  }
  return undefined;
}

function wrongPackage(path: string, target: string): string | undefined {
  const rule = PACKAGES.find(({ name }) => name.test(target));
  if (!rule || rule.folders.some((folder) => path.startsWith(`${folder}/`))) return undefined;
  return `${posix.dirname(path)} may not import ${target}`;
}

function wrongNames(path: string, text: string): readonly string[] {
  const code = text.replace(/\/\*[\s\S]*?\*\/|^\s*\/\/.*$/gm, "");
  return NAMES.filter(
    ({ name, within, owner }) => path.startsWith(within) && !owner.test(path) && name.test(code),
  ).map(({ what }) => `${path}: may not use ${what}`);
}

function rankOf(folder: string): number {
  return RANKS.findIndex((folders) => folders.includes(folder));
}

/** The subfolder of a folder that a file lies in, or "." for its own files. */
function roomIn(folder: string, path: string): string {
  const [room = "", inner] = path.slice(folder.length + 1).split("/");
  return inner === undefined ? "." : room;
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
