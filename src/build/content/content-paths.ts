/** Where each thing is written in a content folder: paths from the folder, with forward slashes. */
/** Where a pattern's recipe is written, from the content folder. */
export function patternPath(slug: string): string {
  return `patterns/${slug}.md`;
}

/** Where a notebook is written, from the content folder. */
export function notebookPath(slug: string): string {
  return `notebooks/${slug}.md`;
}

/** Where a set-up is written, from the content folder. */
export function setupPath(slug: string): string {
  return `setups/${slug}.md`;
}

/** Where a strip's recipe is written, from the content folder. */
export function stripPath(slug: string): string {
  return `strips/${slug}.md`;
}
