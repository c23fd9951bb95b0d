/** What a page prints of itself is stretched as the keeper's printer needs it, and says so. */
import { sayCorrected } from "../../../src/issue/words/sheet-words.ts";
import { paperSize, sidewise } from "../../../src/notebook/paper.ts";
import { correctionFor } from "../../../src/print/printer-correction.ts";
import type { Device } from "../device/device.ts";
import { keptPrinter } from "../device/kept-printer.ts";

/** For as long as a print lasts, on pages whose own drawing is printed in true size. */
export function bindPrintCorrection(window: Window, device: Device): void {
  let undo: readonly (() => void)[] = [];
  window.addEventListener("beforeprint", () => {
    const { body } = window.document;
    const correction = keptPrinter(device);
    const isDrawing = /\bsheet-/.test(body.className) && !body.matches(".printing-out");
    if (!isDrawing || undo.length > 0 || (correction.x === 1 && correction.y === 1)) return;
    const upright = paperSize("A4");
    const isWide = body.className.includes("landscape");
    const { x, y } = correctionFor(isWide ? sidewise(upright) : upright, correction);
    undo = [
      ...[...body.querySelectorAll("main .plate > svg")].flatMap((svg) => [
        setFor(svg, "width", `${Number.parseFloat(svg.getAttribute("width") ?? "") * x}mm`),
        setFor(svg, "height", `${Number.parseFloat(svg.getAttribute("height") ?? "") * y}mm`),
        setFor(svg, "preserveAspectRatio", "none"),
      ]),
      ...[...body.querySelectorAll<HTMLElement>(".print-line > .hundred")].map((line) => {
        line.style.width = `${100 * x}mm`;
        return () => line.style.removeProperty("width");
      }),
      ...[...body.querySelectorAll(".print-line > :first-child")].map((caption) => {
        const before = caption.textContent;
        caption.textContent = `${before} · ${sayCorrected(correction)}`;
        return () => {
          caption.textContent = before;
        };
      }),
    ];
  });
  window.addEventListener("afterprint", () => {
    for (const one of undo) one();
    undo = [];
  });
}

/** Sets an attribute; what it gives sets it back. */
function setFor(element: Element, name: string, value: string): () => void {
  const before = element.getAttribute(name);
  element.setAttribute(name, value);
  return () => {
    if (before === null) element.removeAttribute(name);
    else element.setAttribute(name, before);
  };
}
