/** The chapters of the guide as they are written, and their fences. */
import markdownIt from "markdown-it";
import { type GuideFence, guideFence } from "../../../src/view/guide/guide-fence.ts";
import { sourceFiles } from "../../house/source-files.ts";

export interface ChapterFence {
  readonly info: string;
  readonly fence: GuideFence;
}

/** Every fence of every chapter, by the chapter's file, in order. */
export function chapterFences(): ReadonlyMap<string, readonly ChapterFence[]> {
  const parser = markdownIt({ html: false });
  const chapters = [...sourceFiles(["site/guide"], [".md"])];
  return new Map(
    chapters.map(([path, text]) => {
      const body = text.replace(/^---\n[\s\S]*?\n---\n/, "");
      const fences = parser.parse(body, {}).filter(({ type }) => type === "fence");
      return [
        path,
        fences.map(({ info, content }) => ({ info, fence: guideFence(info, content) })),
      ];
    }),
  );
}
