/** Lengths from a lined page and the paper's corners: lines put through a camera written apart. */
import { describe, expect, it } from "vitest";
import { measureLines } from "../../src/photo/measure-lines.ts";
import type { PaperCorners } from "../../src/photo/measure-paper.ts";
import type { LinedPage } from "../../src/photo/photo-count.ts";
import { aimCamera, type Pose, sheetCorners } from "./stage/camera.ts";
import { FLAT } from "./stage/staged-photo.ts";

const PAPER = { width: 148, height: 210 };
const PHOTO = { width: 1_500, height: 2_000 };
const [PITCH, TOP, LINES] = [7, 18, 26];

function seen(pose: Partial<Pose>): { readonly page: LinedPage; readonly corners: PaperCorners } {
  const camera = aimCamera(PHOTO, PAPER, { ...FLAT, ...pose });
  const at = (mmX: number, mmY: number) => {
    const [x, y] = camera.see([mmX, mmY]);
    return { x, y };
  };
  const lines = Array.from({ length: LINES }, (_, line) =>
    Array.from({ length: 20 }, (__, place) => at(5 + 7 * place, TOP + PITCH * line)),
  );
  const [a, b, c, d] = sheetCorners(PAPER).map(([x, y]) => at(x, y));
  if (!a || !b || !c || !d) throw new Error("a sheet has four corners");
  return { page: { lines, step: 60 }, corners: [a, b, c, d] };
}

describe("lines", () => {
  it.each<[string, Partial<Pose>, number]>([
    ["from straight above", {}, 0.01],
    ["tilted and turned", { pitch: 20, yaw: -20, turn: 8 }, 0.01],
    ["through a barrel lens", { pitch: 10, lens: 0.04 }, 0.05],
    ["through a pincushion", { turn: 15, lens: -0.04 }, 0.05],
  ])("%s tell the pitch and the first line", (_, pose, within) => {
    const { page, corners } = seen(pose);
    const measured = measureLines(page, PHOTO, corners, PAPER);
    if (!measured.ok) throw new Error(measured.kind);
    const { pitch, top, spread } = measured.lines;
    expect(Math.abs(pitch - PITCH)).toBeLessThan(within / 5);
    expect(Math.abs(top - TOP)).toBeLessThan(within);
    expect(spread).toBeLessThan(0.001);
  });

  it.each<[string, Partial<Pose>, (corners: PaperCorners) => PaperCorners, string]>([
    ["of a curled page", { curl: 4, pitch: 20 }, (corners) => corners, "curled"],
    ["with a corner far off", {}, ([a, b, c, d]) => [{ x: a.x, y: a.y + 90 }, b, c, d], "no-sheet"],
    ["with the corners the wrong way round", {}, ([a, b, c, d]) => [d, c, b, a], "no-sheet"],
    ["with all corners on one place", {}, ([a]) => [a, a, a, a], "no-sheet"],
    [
      "with both lower corners too far out",
      { pitch: 15 },
      ([a, b, c, d]) => [a, b, { x: c.x + 60, y: c.y }, { x: d.x - 60, y: d.y }],
      "uneven",
    ],
  ])("%s tell none", (_, pose, moved, kind) => {
    const { page, corners } = seen(pose);
    expect(measureLines(page, PHOTO, moved(corners), PAPER)).toEqual({ ok: false, kind });
  });
});
