/** What the pages of patterns, notebooks and strips are all made from. */
import type { Content } from "../content/load-content.ts";

export interface PageSources {
  readonly content: Content;
  /** Markdown below front matter, as HTML. */
  readonly bodyHtml: (text: string) => string;
  /** The title of the folder that the book builds on and has a file from, by the file's path in the book; "" for its own. */
  readonly originOf: (path: string) => string;
  /** Front matter as written, as highlighted HTML. */
  readonly sourceHtml: (path: string) => string;
}
