/** The straight lines of a drawing as the browser lays them out, measured by the browser itself. */
import type { Page } from "playwright-core";
import type { Axis } from "../../src/measure/axis.ts";

/** One line or outline of a path: its box in millimetres from the top left corner of the drawing. */
export interface DrawnLine {
  /** What the line stands for, such as `tick`. */
  readonly role: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/**
 * All lines of the one drawing that a selector finds. Each path is many lines; each is put beside it as a path of its
 * own for as long as it is measured. CSS counts 96 pixels to the inch (CSS Values and Units, absolute lengths).
 */
export async function drawnLines(page: Page, selector: string): Promise<readonly DrawnLine[]> {
  return page.locator(selector).evaluate((svg) => {
    const toMm = (pixels: number) => (pixels / 96) * 25.4;
    const frame = svg.getBoundingClientRect();
    return [...svg.querySelectorAll("path")].flatMap((path) => {
      const parts = path.getAttribute("d")?.match(/M[^M]*/g) ?? [];
      const holder = path.closest("[class*='d-']");
      const role = /\bd-([\w-]+)/.exec(holder?.getAttribute("class") ?? "")?.[1] ?? "";
      return parts.map((part) => {
        const alone = document.createElementNS("http://www.w3.org/2000/svg", "path");
        alone.setAttribute("d", part);
        alone.setAttribute("stroke", "none");
        path.after(alone);
        const box = alone.getBoundingClientRect();
        alone.remove();
        return {
          role,
          left: toMm(box.left - frame.left),
          right: toMm(box.right - frame.left),
          top: toMm(box.top - frame.top),
          bottom: toMm(box.bottom - frame.top),
        };
      });
    });
  });
}

/** Lines that run along an axis, not outlines or dots. */
export function linesAlong(axis: Axis, lines: readonly DrawnLine[]): readonly DrawnLine[] {
  return lines.filter(({ left, right, top, bottom }) => {
    const [across, down] = [right - left, bottom - top];
    return axis === "across" ? down < THIN && across > SHORT : across < THIN && down > SHORT;
  });
}

/** In millimetres: no line is as broad as the one, none as short as the other. */
const THIN = 0.01;
const SHORT = 0.3;
