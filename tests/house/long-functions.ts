/** Which functions are longer than a reader can see at once, as a check over files given as text. */
import { isFunctionLikeDeclaration, type Node, type SourceFile } from "typescript/unstable/ast";
import { createVirtualFileSystem } from "typescript/unstable/fs";
import { API } from "typescript/unstable/sync";

const CONFIG = "/tsconfig.json";

/** Only the texts themselves are read: nothing that they import, and no types. */
const OPTIONS = { allowJs: true, noLib: true, noResolve: true, types: [] };

/** Each function of more than so many lines, with its inner ones: `path: name has 70 lines`, in the files' order. */
export function longFunctions(files: ReadonlyMap<string, string>, most: number): readonly string[] {
  // A short file has no long function, and needs no parsing.
  const long = [...files].filter(([, text]) => text.split("\n").length > most);
  const paths = long.map(([path]) => `/${path}`);
  const fs = createVirtualFileSystem({
    [CONFIG]: JSON.stringify({ compilerOptions: OPTIONS, files: paths }),
    ...Object.fromEntries(long.map(([path, text]) => [`/${path}`, text])),
  });
  const api = new API({ cwd: "/", fs });
  try {
    const project = api.updateSnapshot({ openProjects: [CONFIG] }).getProject(CONFIG);
    return paths.flatMap((path) => {
      const file = project?.program.getSourceFile(path);
      if (!file) throw new Error(`the compiler has not read ${path}`);
      return longIn(file, most).map((words) => `${path.slice(1)}: ${words}`);
    });
  } finally {
    api.close();
  }
}

function longIn(file: SourceFile, most: number): readonly string[] {
  const found: string[] = [];
  const visit = (node: Node): void => {
    const lines = isFunctionLikeDeclaration(node) ? linesOf(node, file) : 0;
    if (lines > most) found.push(`${nameOf(node, file)} has ${lines} lines`);
    node.forEachChild(visit);
  };
  visit(file);
  return found;
}

/** Without the comment above it. */
function linesOf(node: Node, file: SourceFile): number {
  return lineAt(node.end, file) - lineAt(node.getStart(file), file) + 1;
}

/** Its own name or that of what it is given to, else where it begins. */
function nameOf(node: Node, file: SourceFile): string {
  const named = [node, node.parent].find(hasName);
  return named
    ? named.name.getText(file)
    : `what begins in line ${lineAt(node.getStart(file), file)}`;
}

function hasName(node: Node): node is Node & { readonly name: Node } {
  return "name" in node && node.name !== undefined;
}

function lineAt(position: number, file: SourceFile): number {
  return file.getLineAndCharacterOfPosition(position).line + 1;
}
