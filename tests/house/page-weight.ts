/** What a page loads only when it is needed: no script that a page opens with may bring it along. */
import { posix } from "node:path";

/** Where the late parts lie. What stands in them is a bundle of its own, fetched when somebody asks for it. */
const LATE = /^site\/script\/lazy\//;

/** What is too heavy to come with a page: files by their path, packages by their name. */
const HEAVY = /^(src\/print\/pdf\/|(yaml|zod|pdfkit|fontkit)(\/|$)|@(codemirror|lezer)\/)/;

/** A sentence for each script of a page that reaches something heavy by imports of values; types weigh nothing. */
export function weightIssues(files: ReadonlyMap<string, string>): readonly string[] {
  return [...files.keys()].flatMap((path) => {
    if (!path.startsWith("site/script/") || LATE.test(path)) return [];
    const heavy = valuesOf(path, files.get(path) ?? "").find((target) => reaches(target, files));
    return heavy ? [`${path}: brings along what is heavy, by way of ${heavy}`] : [];
  });
}

function reaches(from: string, files: ReadonlyMap<string, string>): boolean {
  const seen = new Set<string>();
  const visit = (path: string): boolean => {
    if (HEAVY.test(path)) return true;
    const text = files.get(path);
    if (seen.has(path) || text === undefined) return false;
    seen.add(path);
    return valuesOf(path, text).some(visit);
  };
  return visit(from);
}

/** The files and packages that a file imports values of. */
function valuesOf(path: string, text: string): readonly string[] {
  const found = text.matchAll(
    /^\s*(?:import|export)\s+(?!type\b)(\{[^}]*\}|[^"';]*?)\s*from\s*["']([^"']+)["']|^\s*import\s*["']([^"']+)["']/gm,
  );
  return [...found]
    .filter(([, names = ""]) => !isOnlyTypes(names))
    .map(([, , from, bare]) => from ?? bare ?? "")
    .map((target) => (target.startsWith(".") ? posix.join(posix.dirname(path), target) : target));
}

function isOnlyTypes(names: string): boolean {
  const listed = /^\{([^}]*)\}$/.exec(names)?.[1]?.split(",") ?? [];
  const named = listed.map((name) => name.trim()).filter((name) => name !== "");
  return named.length > 0 && named.every((name) => name.startsWith("type "));
}
