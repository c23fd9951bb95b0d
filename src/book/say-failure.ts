/** The words for a build that failed: what the system refused is said in one line, a fault of our own with its stack. */

/** What the system says with a code, as people say it. */
const REASONS: Readonly<Record<string, string>> = {
  EACCES: "you are not allowed to write there",
  EPERM: "you are not allowed to write there",
  EROFS: "it can only be read there",
  ENOSPC: "the disk is full",
  EDQUOT: "your share of the disk is full",
  EFBIG: "a file would be too large for the disk",
  ENOTDIR: "a part of the path is a file, not a folder",
  EEXIST: "a part of the path is a file, not a folder",
  ENAMETOOLONG: "the name is too long",
  ELOOP: "links lead round in a circle",
  ENOENT: "a part of the path went away, or cannot be made",
  EBUSY: "another program holds it",
  EMFILE: "too many files are open",
  ENFILE: "too many files are open",
};

/** Why the book could not be built. Eleventy wraps what a template threw; the innermost error tells what happened. */
export function sayFailure(error: unknown, output: string): string {
  const chain = chainOf(error);
  const refused = chain.map(refusalOf).find((one) => one !== undefined);
  if (refused) return sayRefusal(refused, output);
  const messages = chain.map(({ message }) => message).join("\n");
  return `The book could not be built.\n${messages}\n${chain.at(-1)?.stack ?? ""}`;
}

/** What the system would not do. */
interface Refusal {
  readonly code: string;
  readonly message: string;
  readonly path: string;
}

function refusalOf(error: Error): Refusal | undefined {
  if (!("syscall" in error) || !("code" in error) || typeof error.code !== "string") return;
  const path = "path" in error && typeof error.path === "string" ? error.path : "";
  return { code: error.code, message: error.message, path };
}

function sayRefusal({ code, message, path }: Refusal, output: string): string {
  const reason = REASONS[code] ?? message;
  const isOutput = path === "" || output.startsWith(path) || path.startsWith(output);
  if (isOutput) {
    return `The output ${output} cannot be written: ${reason}. Mend that, or choose another with --output=FOLDER.`;
  }
  return `The book could not be built, for ${path} cannot be used: ${reason}.`;
}

function chainOf(error: unknown): Error[] {
  const chain: Error[] = [];
  let inner: unknown = error;
  while (inner instanceof Error && !chain.includes(inner)) {
    chain.push(inner);
    inner = "originalError" in inner ? inner.originalError : inner.cause;
  }
  return chain;
}
