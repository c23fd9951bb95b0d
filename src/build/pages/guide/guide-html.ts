/** What the guide shows beside its sources, as HTML. */
import type { WriteSvg } from "../../../draw/svg/write-svg.ts";
import type { ShownExample } from "../../../view/guide/guide-example.ts";
import { htmlText } from "../../web/markup-text.ts";

/** Beside a source: drawings, a report, or why it does not fit. */
export function exampleHtml(shown: readonly ShownExample[], write: WriteSvg): string {
  return `<div class="shown">\n${shown.map((one) => oneHtml(one, write)).join("")}</div>\n`;
}

/** A drawing by itself, between two paragraphs. */
export function figureHtml(shown: readonly ShownExample[], write: WriteSvg): string {
  return shown.map((one) => oneHtml(one, write)).join("");
}

function oneHtml(shown: ShownExample, write: WriteSvg): string {
  switch (shown.kind) {
    case "drawing":
      return drawingHtml(shown, write);
    case "report":
      return `<div class="answer"><p>The check says:</p>\n<pre class="said" tabindex="0">${htmlText(shown.text)}</pre></div>\n`;
    case "misfit": {
      const { reason, near, nearHead } = shown;
      const list = near.map((change) => `<li>${htmlText(change)}</li>`).join("");
      const ways = near.length > 0 ? `<p>${htmlText(nearHead)}</p><ul>${list}</ul>` : "";
      return `<div class="answer"><p>${htmlText(reason)}</p>${ways}</div>\n`;
    }
  }
}

/**
 * Strips and sheets are seen as they are printed, so they keep the colours of paper by night. All but
 * sheets may be pushed along where there is no room for them.
 */
function drawingHtml(
  { shape, scene, caption }: Extract<ShownExample, { kind: "drawing" }>,
  write: WriteSvg,
) {
  const isPrinted = shape === "strip" || shape === "sheet";
  const plate = isPrinted ? "plate true-size" : "plate pan";
  const scroll =
    shape === "sheet" ? "" : ` tabindex="0" role="region" aria-label="${htmlText(scene.title)}"`;
  return `<figure class="figure-${shape}"><div class="${plate}"${scroll}>\n${write(scene)}</div><figcaption>${htmlText(caption)}</figcaption></figure>\n`;
}
