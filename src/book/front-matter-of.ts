/** The front matter of a file as it is written, with its two lines of dashes: what a page shows as its source. */

/** "" where there is none. */
export function frontMatterOf(text: string): string {
  return (
    /^---[ \t]*\r?\n[\s\S]*?\n---[ \t]*(?=\r?\n|$)/.exec(text.replace(/^\uFEFF/, ""))?.[0] ?? ""
  );
}
