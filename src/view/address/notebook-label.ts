/** A notebook that is kept as an address, for pages that only name it or leave it out: nothing is checked here. */

/** The keys of a notebook in an address. */
export const NOTEBOOK_KEYS_IN_ADDRESS = [
  "paper",
  "pitch",
  "dots",
  "first",
  "count",
  "ruling",
  "binding",
  "middle",
  "name",
  "file",
] as const;

/** `A5, 24 × 35`, or the name that it was given; nothing where the address has no notebook. */
export function notebookLabel(hash: string): string | undefined {
  const values = valuesOf(hash);
  const [paper, dots] = [values.get("paper"), values.get("dots")];
  if (!paper || !dots) return undefined;
  const size = paper.includes(",") ? `${asProduct(paper)} mm` : paper;
  return values.get("name") || `${size}, ${asProduct(dots)}`;
}

/** What an address says of its notebook alone, without the version: `paper=A5&pitch=5&dots=24,35`; "" for nothing. */
export function addressOfNotebook(hash: string): string {
  return partsOf(hash).filter(isOfNotebook).join("&");
}

/** The address without its notebook: the page that it opens takes the keeper's. */
export function withoutNotebook(hash: string): string {
  return `#${partsOf(hash)
    .filter((part) => !isOfNotebook(part))
    .join("&")}`;
}

/** The address with these entries of a notebook, and of days, in place of its own notebook; "" for none of either. */
export function withNotebook(hash: string, notebook: string, dates: string): string {
  const parts = [
    ...(notebook === "" ? partsOf(hash) : partsOf(withoutNotebook(hash))),
    notebook,
    dates,
  ];
  return `#${parts.filter((part) => part !== "").join("&")}`;
}

function partsOf(hash: string): readonly string[] {
  return hash.replace(/^#/, "").split("&");
}

function isOfNotebook(part: string): boolean {
  const own: readonly string[] = NOTEBOOK_KEYS_IN_ADDRESS;
  return own.includes(part.replace(/=.*$/, ""));
}

function valuesOf(hash: string): URLSearchParams {
  return new URLSearchParams(hash.replace(/^#/, ""));
}

/** A second value that is left out is the same as the first. */
function asProduct(pair: string): string {
  const [across = "", down = across] = pair.split(",");
  return `${across} × ${down}`;
}
