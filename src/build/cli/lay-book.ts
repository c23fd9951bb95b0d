/** Begins a book: a folder with one file of each kind on the general layouts, and the scripts that show and build it. */
import { cp, mkdir, readdir, writeFile } from "node:fs/promises";
import { join, resolve } from "node:path";
import { systemErrorIn } from "./say-failure.ts";

/** What begins such a folder, in the project and in its npm package. */
const STARTER = "starter";

/** Not in the starter: npm leaves a file of this name out of a package. */
const IGNORED = "node_modules/\n.cache/\n_site/\n";

interface LayCall {
  /** The folder that the command was typed in. */
  readonly typedIn: string;
  readonly project: string;
}

/** The exit code of `spanbook new`. Nothing that is there is touched. */
export async function layBook(named: string, { typedIn, project }: LayCall): Promise<number> {
  const folder = resolve(typedIn, named);
  try {
    const held = await readdir(folder).catch(noneIfMissing);
    if (held.length > 0) {
      return refuse(`${named} is there and not empty: choose another name, or empty it first.`);
    }
    await mkdir(folder, { recursive: true });
    const without = { recursive: true, force: false, errorOnExist: true };
    await cp(join(project, STARTER), folder, without);
    await writeFile(join(folder, ".gitignore"), IGNORED, { flag: "wx" });
  } catch (error) {
    return refuse(whyNot(named, error));
  }
  console.log(sayLaid(named));
  return 0;
}

function noneIfMissing(error: unknown): readonly string[] {
  if (systemErrorIn(error)?.code === "ENOENT") return [];
  throw error;
}

function whyNot(named: string, error: unknown): string {
  const refused = systemErrorIn(error);
  if (refused === undefined) throw error;
  if (refused.code === "ENOTDIR" || refused.code === "EEXIST") {
    return `${named} is a file, or lies in one: choose another name.`;
  }
  return `${named} cannot be made: the system says ${refused.code}. Choose another place.`;
}

function sayLaid(named: string): string {
  return `${named} has a book on the general layouts: a notebook, a pattern, a strip and a set-up of its own.
Go there and look: cd ${named}, then npm start. It finds Spanbook where it is installed there, in a folder above, or for all (npm install --global).
Change notebooks/our-notebook.md first: count your own dots.`;
}

function refuse(why: string): number {
  console.error(why);
  return 1;
}
