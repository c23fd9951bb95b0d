/** What templates ask for besides the book: sections of a chapter, addresses, drawings in a page, a policy's names of scripts. */
import { createHash } from "node:crypto";
import { htmlText } from "../web/markup-text.ts";

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

/**
 * The address of `to` as seen from the page `from`, both written from the book's root: up to the root and down again.
 * A folder stands for its `index.html`, for a folder's own address lists its files when it is opened from disk.
 */
export function rel(to: string, from: string): string {
  const hash = to.indexOf("#");
  const path = hash < 0 ? to : to.slice(0, hash);
  const fragment = hash < 0 ? "" : to.slice(hash);
  const file = path.endsWith("/") ? `${path}index.html` : path;
  return "../".repeat(from.split("/").length - 2) + file.slice(1) + fragment;
}

/** A web space shows this page for whatever is not there, however deep: a relative link from it would lead nowhere. */
const NOT_FOUND = "/404.html";

/** `to` and `from` are written from the book's root; `url` is the book's address, "" where it tells none. */
export function pageAddress(to: string, from: string, url: string): string {
  return from === NOT_FOUND ? url + rel(to, from) : rel(to, from);
}

/** How a page's policy names the one script that may stand in it (W3C, Content Security Policy Level 3, 2.3.1). */
export function policyHash(script: string): string {
  return `sha256-${createHash("sha256").update(script).digest("base64")}`;
}

/** HTML knows SVG's namespace by itself, so the drawing is put in as it is but for that. */
export function inlineSvg(file: string): string {
  return file.replace(' xmlns="http://www.w3.org/2000/svg"', "").trim();
}

/** Where the layout of all pages leaves room for it. */
const ROOM = "<!-- report -->";

/** A served page with what is wrong in the content: put in as it is sent, so that no page is written anew for a mistake. */
export function withReport(page: string, report: string): string {
  if (report === "") return page;
  const shown = `<section class="report" role="alert">
<strong>The pages below are the last good ones.</strong>
<pre>${htmlText(report)}</pre>
</section>`;
  return page.replace(ROOM, () => shown);
}
