/** A pattern as nested CSS grids, for a browser to lay out: one step is 10 px, each leaf carries its path. */
import type { Area, Split, TrackSizing } from "../../src/recipe/recipe.ts";

export const PX_PER_STEP = 10;

/** Leaves may not push their track; margins are padding. */
export const GRID_STYLE =
  "*{box-sizing:border-box;margin:0;min-width:0;min-height:0}.root{position:absolute;left:0;top:0}";

/** One page as HTML. Shares, minimums, fixed steps, one gap and the placings that CSS has a word for. */
export function gridPage(page: Area, across: number, down: number): string {
  const size = `width:${px(across)};height:${px(down)}`;
  return `<div class="root" style="${size}">${cell(page, "", "width:100%;height:100%;")}</div>`;
}

function cell(area: Area, path: string, style: string): string {
  const { top = 0, right = 0, bottom = 0, left = 0 } = area.margin.steps;
  const padding = `padding:${[top, right, bottom, left].map(px).join(" ")};`;
  if (!area.split) {
    const leaf = `<div data-path="${path}" style="width:100%;height:100%"></div>`;
    return `<div style="${style}${padding}">${leaf}</div>`;
  }
  const name = area.split.axis === "across" ? "columns" : "rows";
  const cells = area.split.tracks.map((track, i) =>
    cell(track.area, `${path === "" ? "" : `${path}.`}${name}.${i}`, ""),
  );
  return `<div style="${style}${padding}${gridStyle(area.split)}">${cells.join("")}</div>`;
}

function gridStyle({ axis, tracks, gap, leftover }: Split): string {
  const sizes = runs(tracks.map(({ size }) => trackText(size)));
  const one = "minmax(0,1fr)";
  const place = PLACES[leftover.kind];
  if (place === undefined) throw new RangeError(`CSS has no word for leftover: ${leftover.kind}`);
  return axis === "across"
    ? `display:grid;grid-template:${one}/${sizes};column-gap:${px(gap.min)};justify-content:${place};`
    : `display:grid;grid-template:${sizes}/${one};row-gap:${px(gap.min)};align-content:${place};`;
}

const PLACES: Readonly<Record<Split["leftover"]["kind"], string | undefined>> = {
  end: "start",
  start: "end",
  centre: "center",
  gaps: "space-between",
  parts: undefined,
  track: undefined,
};

function trackText(size: TrackSizing): string {
  if (size.kind === "steps") return px(size.steps);
  if (size.kind === "same" || size.max !== Number.POSITIVE_INFINITY)
    throw new RangeError("CSS has no share with a max or a name");
  const share = `${size.weight / 100}fr`;
  return size.min === 1 ? share : `minmax(${px(size.min)},${share})`;
}

/** `repeat()` for what comes more than once in a row. */
function runs(texts: readonly string[]): string {
  const found: { text: string; times: number }[] = [];
  for (const text of texts) {
    const last = found.at(-1);
    if (last?.text === text) last.times++;
    else found.push({ text, times: 1 });
  }
  return found.map(({ text, times }) => (times > 1 ? `repeat(${times},${text})` : text)).join(" ");
}

function px(steps: number): string {
  return `${steps * PX_PER_STEP}px`;
}
