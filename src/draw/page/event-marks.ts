/** The events of days in the boxes of a page: small text where the box of a day has room beside or below its label. */
import type { DatedEvent } from "../../events/events-in.ts";
import { sayEvent } from "../../issue/words/say-event.ts";
import type { FittingPlan } from "../../plan/plan.ts";
import { type PaperBox, writingStep } from "../geometry/paper-box.ts";
import type { Rect } from "../geometry/rect.ts";
import { SMALLEST } from "../label/fit-label.ts";
import { labelZone } from "../label/label-zone.ts";
import { shortened } from "../label/text-block.ts";
import type { TextMark } from "../scene.ts";
import { BASELINE, CAPITAL, textWidth } from "../text-width.ts";

/** In millimetres: as small as can be read, one line below another, and what a line needs beside it to be worth writing. */
const SIZE = SMALLEST;
const LINE = 2.6;
const AIR = 0.5;
const NARROWEST = 8;
/** Narrower lines leave times out: nothing of a title would be left. */
const NARROW = 12;
/** Before and after a text: it begins where labels do. */
const [BEFORE, AFTER] = [1.4, 0.3];

export interface EventMarks {
  readonly marks: readonly TextMark[];
  /** What the texts cover: the dots below them would make them hard to read. */
  readonly taken: readonly Rect[];
}

/** The events that a drawing writes into its boxes: those of a tracker are for ticks. */
export function writtenEvents(
  plan: FittingPlan,
  events: readonly DatedEvent[] = [],
): readonly DatedEvent[] {
  return plan.recipe.purpose === "tracker" ? [] : events;
}

/** A line of each day's box for each of its events, of the boxes of one page; a full box says how many more there are: "+2". */
export function eventMarks(boxes: readonly PaperBox[], events: readonly DatedEvent[]): EventMarks {
  if (events.length === 0) return { marks: [], taken: [] };
  const marks = [...roomOfDays(boxes)].flatMap(([day, lines]) => {
    const ofDay = events.filter(({ from, to }) => from <= day && day <= to);
    const hasTimes = (lines[0]?.width ?? 0) >= NARROW;
    const texts = ofDay.map((event) => sayEvent(event, hasTimes && event.from === day));
    return textMarks(texts, lines);
  });
  return { marks, taken: marks.map(coveredBy) };
}

function coveredBy({ x, y, text }: TextMark): Rect {
  const top = y - CAPITAL * SIZE - AIR;
  return { x: x - AIR, y: top, width: textWidth(text, SIZE) + 2 * AIR, height: y + AIR - top };
}

/** Of the boxes that stand for one day alone, the one with most room for text: its lines, by the day. */
function roomOfDays(boxes: readonly PaperBox[]): ReadonlyMap<number, readonly Rect[]> {
  const rooms = new Map<number, readonly Rect[]>();
  const area = (lines: readonly Rect[]) => lines.reduce((sum, { width }) => sum + width, 0);
  for (const paperBox of boxes) {
    const { dates, isOutside } = paperBox.box;
    if (!dates || dates.from !== dates.to || isOutside) continue;
    const lines = freeLines(paperBox);
    if (area(lines) > area(rooms.get(dates.from) ?? [])) rooms.set(dates.from, lines);
  }
  return rooms;
}

/** The lines of text that a box has room for: below its label, or beside it where nothing is below. */
function freeLines(paperBox: PaperBox): readonly Rect[] {
  const { box, taken, pitch } = paperBox;
  if (box.fill === "squares") return [];
  const zone = labelZone(paperBox);
  const whole = box.fill === "checks" ? movedBy(zone, pitch.across) : zone;
  if (!taken) return linesIn(paperBox, whole);
  // A label in the corner has the first row to itself.
  const below = Math.max(taken.y + taken.height, zone.y + pitch.down);
  const found = linesIn(paperBox, { ...whole, y: below, height: zone.y + zone.height - below });
  if (found.length > 0) return found;
  const beside = movedBy(whole, taken.x + taken.width - whole.x);
  return linesIn(paperBox, beside);
}

function movedBy(rect: Rect, by: number): Rect {
  return { ...rect, x: rect.x + by, width: rect.width - by };
}

/** Text keeps to the rules of a box that has some. */
function linesIn(paperBox: PaperBox, room: Rect): readonly Rect[] {
  const { box } = paperBox;
  if (room.width < NARROWEST) return [];
  if (box.fill === "lines" || box.fill === "checks" || box.fill === "numbers") {
    return Array.from({ length: Math.floor(box.h / box.every) }, (_, line) => {
      const { from, to } = writingStep(paperBox, "down", (line + 1) * box.every - 1);
      return { ...room, y: from, height: to - from };
    }).filter(({ y, height }) => height >= SIZE && y >= room.y - 0.01);
  }
  const count = Math.floor((room.height - AIR) / LINE);
  if (count <= 1) return room.height >= SIZE + AIR ? [room] : [];
  return Array.from({ length: count }, (_, line) => ({
    ...room,
    y: room.y + line * LINE,
    height: LINE,
  }));
}

function textMarks(texts: readonly string[], lines: readonly Rect[]): readonly TextMark[] {
  const isWhole = texts.length <= lines.length;
  return lines.slice(0, texts.length).map((line, index) => {
    const left = !isWhole && index === lines.length - 1 ? texts.length - index : 0;
    const width = line.width - BEFORE - AFTER;
    return {
      kind: "text",
      role: "event",
      x: line.x + BEFORE,
      y: line.y + line.height / 2 + BASELINE * SIZE,
      size: SIZE,
      anchor: "start",
      text: left > 0 && lines.length > 1 ? `+${left}` : withMore(texts[index] ?? "", left, width),
    };
  });
}

/** As much of a text as fits; where it stands for others, too, how many. */
function withMore(text: string, count: number, width: number): string {
  const more = count > 1 ? ` +${count - 1}` : "";
  return `${shortened(text, SIZE, width - textWidth(more, SIZE))}${more}`;
}
