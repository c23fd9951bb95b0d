/** The lines for what cannot be written, a book or its pages while it is served: why, and what to do. */
import { resolve, sep } from "node:path";
import { type SystemError, systemErrorIn } from "./say-failure.ts";

/** What the system's codes say of a folder that is to be made, filled and renamed (POSIX, errno.h). */
const REASONS: Readonly<Record<string, string>> = {
  EACCES: "you may not read and write there",
  EPERM: "nobody may write there",
  EROFS: "it lies on a disk that can only be read",
  ENOSPC: "the disk is full",
  EDQUOT: "your share of the disk is used up",
  EFBIG: "a file is larger than the disk or your account allows",
  EIO: "the disk does not answer as it should",
  ENOTDIR: "a part of its path is a file, not a folder",
  EEXIST: "a part of its path is a file, not a folder",
  ENAMETOOLONG: "its name is too long",
  ELOOP: "its path leads in a circle",
  ENOENT: "there is no folder where it is to be, or it vanished meanwhile",
  EBUSY: "it is in use, or is a disk of its own",
  EXDEV: "it is a disk of its own",
  ENOTEMPTY: "somebody else wrote into it meanwhile",
};

/** What helps besides another place. */
const REMEDIES: Readonly<Record<string, string>> = {
  ENOSPC: "Make room, or choose",
  EDQUOT: "Make room, or choose",
  EBUSY: "Take a folder in it, or choose",
  EXDEV: "Take a folder in it, or choose",
};

/** Errors of a file that is open already name no path: it is one of the output's, for nothing else must be written. */
const WITHOUT_PATH = new Set(["ENOSPC", "EDQUOT", "EFBIG", "EIO"]);

/** The line, where the disk refused something at the output or beside it; undefined where something else went wrong. */
export function sayUnwritable(output: string, error: unknown): string | undefined {
  const refused = systemErrorIn(error);
  if (!refused || !isAbout(refused, output)) return undefined;
  const remedy = REMEDIES[refused.code] ?? "Choose";
  return `The output ${output} cannot be written: ${reasonOf(refused)}. ${remedy} another with --output=FOLDER.`;
}

/** The same for the folder in which the pages lie while a book is served. */
export function sayUnservable(folder: string, error: unknown): string | undefined {
  const refused = systemErrorIn(error);
  if (!refused || !isAbout(refused, folder)) return undefined;
  return `Pages cannot be written into ${folder}: ${reasonOf(refused)}. Put that right and start again, or build the book with \`build --output=FOLDER\`.`;
}

function reasonOf({ code }: SystemError): string {
  return REASONS[code] ?? `the system says ${code}`;
}

/** A book grows in a folder beside the output, which may first have to be made. Eleventy copies to paths from where it runs. */
function isAbout({ code, path, dest }: SystemError, output: string): boolean {
  if (path === undefined) return WITHOUT_PATH.has(code);
  const paths = [path, ...(dest === undefined ? [] : [dest])].map((one) => resolve(one));
  return paths.some(
    (one) => one.startsWith(output) || output.startsWith(one.endsWith(sep) ? one : one + sep),
  );
}
