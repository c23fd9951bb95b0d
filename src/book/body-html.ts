/** The Markdown that people write below their front matter, as HTML that stands below a page's own heading. */
import type { MarkdownIt } from "markdown-it";

/** Headings go down by one, so that a page has one first heading; raw HTML stays text, as the instance is set up. */
export function bodyHtml(markdown: MarkdownIt, text: string): string {
  const tokens = markdown.parse(text, {});
  for (const token of tokens) {
    const level = /^h([1-6])$/.exec(token.tag)?.[1];
    if (level) token.tag = `h${Math.min(6, Number(level) + 1)}`;
  }
  return markdown.renderer.render(tokens, markdown.options, {});
}
