/** The sections of a chapter, for the list at its head: read off its finished HTML, which is the guide's own. */

export interface ChapterSection {
  readonly id: string;
  /** The heading as it stands, code and all. */
  readonly html: string;
}

/** Every second-level heading that has an id, in order. */
export function chapterSections(html: string): readonly ChapterSection[] {
  return [...html.matchAll(/<h2 id="([^"]+)"[^>]*>(.*?)<\/h2>/gs)].map(
    ([, id = "", heading = ""]) => ({ id, html: heading }),
  );
}
