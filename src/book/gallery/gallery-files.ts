/** What the gallery's script loads beside its page. */
import type { MarkdownIt } from "markdown-it";
import { galleryFacts } from "../../view/gallery/gallery-facts.ts";
import type { Cards } from "../../view/pattern/pattern-cards.ts";
import type { Content } from "../content/load-content.ts";
import { pageScript } from "../page-script.ts";
import type { SideFile } from "../side-files.ts";
import { searchIndex } from "./search-index.ts";

/** The facts, loaded with the page, and the index, loaded when somebody searches. */
export function galleryFiles(
  content: Content,
  cards: Cards,
  markdown: MarkdownIt,
): readonly SideFile[] {
  const facts = galleryFacts(content, cards);
  const index = searchIndex(content.recipes, markdown);
  return [
    { path: "patterns/facts.js", text: pageScript("spanbookFacts", facts) },
    { path: "patterns/search-index.js", text: pageScript("spanbookSearchIndex", index) },
  ];
}
