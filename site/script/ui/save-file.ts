/** Hands a file to whoever asked for it, as a download. */

/** The kinds of files that the pages make. */
export const KINDS = {
  svg: "image/svg+xml",
  json: "application/json",
  md: "text/markdown;charset=utf-8",
  pdf: "application/pdf",
  zip: "application/zip",
} as const;

/** Offers the file under a name with its ending. */
export function saveFile(name: string, ending: keyof typeof KINDS, content: BlobPart): void {
  const address = URL.createObjectURL(new Blob([content], { type: KINDS[ending] }));
  const link = document.createElement("a");
  link.href = address;
  link.download = `${name}.${ending}`;
  link.click();
  // The download has begun by then; an address that is never given back keeps the file in memory.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
