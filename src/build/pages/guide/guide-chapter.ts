/** A chapter of the guide on its way from Markdown to HTML: its examples are built, its headings can be linked to. */
import type { StateCore, Token } from "markdown-it";
import type { Recipe } from "../../../recipe/recipe.ts";
import { readPattern, type ShownExample, showExample } from "../../../view/guide/guide-example.ts";
import {
  type ExampleFence,
  type FigureFence,
  guideFence,
} from "../../../view/guide/guide-fence.ts";
import { guideFigure } from "../../../view/guide/guide-figures.ts";
import type { Cache } from "../../artifacts/cache/cache.ts";
import { openSvgWriter } from "../../artifacts/make/svg-writer.ts";
import { exampleHtml, figureHtml } from "./guide-html.ts";
/** The HTML beside each fence of a chapter, in their order. */
export type ChapterView = readonly string[];

interface ChapterContext {
  readonly cache: Cache<ChapterView>;
  /** Changes with the engine. */
  readonly version: string;
}

/** Puts what the build makes of a chapter's fences into its tokens, gives ids to its headings, and lets its tables scroll. */
export function showChapter(
  { tokens, Token }: StateCore,
  { cache, version }: ChapterContext,
): Token[] {
  const fences = tokens.filter(({ type }) => type === "fence");
  const sources = fences.flatMap(({ info, content }) => [info, content]);
  const shown = cache.take([version, ...sources], () => drawFences(fences));
  const sourceInfo = sourceInfos(fences);
  const html = (content: string) => Object.assign(new Token("html_block", "", 0), { content });
  const used = new Set<string>();
  let heading = "";
  let fence = 0;
  return tokens.flatMap((token, index) => {
    switch (token.type) {
      case "heading_open":
        heading = headingId(tokens[index + 1]?.content ?? "", used);
        token.attrSet("id", heading);
        return [token];
      case "table_open":
        return [
          html(`<div class="table" tabindex="0" role="region" aria-labelledby="${heading}">`),
          token,
        ];
      case "table_close":
        return [token, html("</div>\n")];
      case "fence": {
        const beside = shown[fence] ?? "";
        const isFigure = token.info.startsWith("figure ");
        token.info = sourceInfo[fence++] ?? "";
        if (isFigure) return [html(beside)];
        return beside === ""
          ? [token]
          : [html('<div class="example">\n'), token, html(`${beside}</div>\n`)];
      }
      default:
        return [token];
    }
  });
}

/** For the highlighter: each source's language, and its new lines where an example of the same name came before. */
function sourceInfos(fences: readonly Token[]): readonly string[] {
  const before = new Map<string, string>();
  return fences.map(({ info, content }) => {
    const language = info.split(" ")[0] ?? "";
    const fence = guideFence(info, content);
    if (fence.kind !== "pattern" || fence.isWrong) return language;
    const earlier = before.get(fence.slug);
    before.set(fence.slug, content);
    return earlier === undefined ? language : `${language}/${newLines(earlier, content).join(",")}`;
  });
}

/** Each fence is drawn on its own; a strip finds the patterns that were shown before it. */
function drawFences(fences: readonly Token[]): ChapterView {
  const write = openSvgWriter();
  const patterns = new Map<string, Recipe>();
  return fences.map(({ info, content }, index) => {
    const fence = guideFence(info, content);
    const id = `shown-${index + 1}`;
    if (fence.kind === "plain") return "";
    const shown = fence.kind === "figure" ? [figure(fence, id)] : example(fence, id, patterns);
    const html = fence.kind === "figure" ? figureHtml : exampleHtml;
    return html(shown, (scene) => write(scene, "inline"));
  });
}

function figure({ name, text }: FigureFence, id: string): ShownExample {
  const shape = name === "sheet" || name === "bars" ? "sheet" : "slice";
  return { kind: "drawing", shape, scene: guideFigure(name, id), caption: text.trim() };
}

function example(
  fence: ExampleFence,
  id: string,
  patterns: Map<string, Recipe>,
): readonly ShownExample[] {
  const shown = showExample(fence, { id, patterns });
  if (fence.kind === "pattern" && !fence.isWrong) patterns.set(fence.slug, readPattern(fence));
  return shown;
}

/** Their indexes from 0. How far a line stands in does not count; a line that is there twice is new once. */
export function newLines(before: string, after: string): readonly number[] {
  const left = new Map<string, number>();
  for (const line of linesOf(before)) left.set(line, (left.get(line) ?? 0) + 1);
  return linesOf(after).flatMap((line, index) => {
    const count = left.get(line) ?? 0;
    left.set(line, count - 1);
    return count > 0 ? [] : [index];
  });
}

function linesOf(text: string): readonly string[] {
  return text
    .trimEnd()
    .split("\n")
    .map((line) => line.trim());
}

/** Its words in small letters, joined by hyphens, from the first letter on; a number behind it where the page has that id already. */
export function headingId(words: string, used: Set<string>): string {
  const plain =
    words
      .toLowerCase()
      .replace(/[`’']/g, "")
      .replace(/[^a-z0-9]+/g, "-")
      .replace(/^[^a-z]+|-$/g, "") || "part";
  let id = plain;
  for (let count = 2; used.has(id); count++) id = `${plain}-${count}`;
  used.add(id);
  return id;
}
