/** What is written in a run: how many steps each track has, and once the run's label. */
import type { StepInterval } from "../../measure/box.ts";
import type { Run } from "../../strip/strip.ts";
import type { Interval } from "../geometry/rect.ts";
import type { TextMark } from "../scene.ts";
import { textWidth } from "../text-width.ts";
import { type Face, laneTop, mmAt } from "./strip-face.ts";
import { markedBy } from "./strip-stems.ts";

/** From a stem or the end of a bar to a text. */
const SPACE = 0.4;
const MAX_SIZE = 2.3;
/** Digits are about so high, in parts of the font size. */
const DIGIT_HEIGHT = 0.72;

/** The texts, and the stretches that they take from the bars. */
export interface RunTexts {
  readonly counts: readonly TextMark[];
  readonly label: TextMark;
  readonly taken: readonly Interval[];
}

/** Texts keep clear of the stems that pass on their way to lanes farther in. */
export function runTexts(face: Face, laneIndex: number, run: Run, label: string): RunTexts {
  const size = Math.min(MAX_SIZE, face.laneHeight * 0.82);
  const baseline = laneTop(face, laneIndex) + (face.laneHeight + size * DIGIT_HEIGHT) / 2;
  const write = (text: string, role: "lane-text" | "lane-letter", place: Interval): TextMark => {
    const x = (place.from + place.to) / 2;
    return { kind: "text", role, x, y: baseline, size, anchor: "middle", text };
  };
  const passing = passingMarks(face, laneIndex);
  const slots = run.tracks.map((track) => trackSlots(face, track, passing));
  const counts = run.tracks.map(({ length }, index) =>
    countPlace(slots[index] ?? [], textWidth(String(length), size)),
  );
  const labelWidth = textWidth(label, size, "bold");
  const labelPlace = placeLabel({ face, laneIndex, run, slots, counts, width: labelWidth });
  return {
    counts: run.tracks.flatMap(({ length }, index) => {
      const place = counts[index];
      if (place === undefined || place === labelPlace) return [];
      return [write(String(length), "lane-text", place)];
    }),
    label: write(label, "lane-letter", labelPlace),
    taken: [...counts, labelPlace],
  };
}

/** Where stems pass on their way to lanes farther in, in ascending order. */
function passingMarks(face: Face, laneIndex: number): readonly number[] {
  const marks = new Set(face.side.lanes.slice(laneIndex + 1).flatMap(markedBy));
  return [...marks].sort((a, b) => a - b);
}

/** The stretches of a track that no passing stem crosses. */
function trackSlots(
  face: Face,
  { from, length }: StepInterval,
  passing: readonly number[],
): readonly Interval[] {
  const inside = passing.filter((position) => from < position && position < from + length);
  const stops = [from, ...inside, from + length];
  return stops.slice(1).map((stop, index) => ({
    from: mmAt(face.side, stops[index] ?? from) + SPACE,
    to: mmAt(face.side, stop) - SPACE,
  }));
}

/** Where a text of some width comes nearest to the middle of a track's slots; in the widest if in none. */
function countPlace(slots: readonly Interval[], width: number): Interval {
  const from = slots[0]?.from ?? 0;
  const middle = (from + (slots.at(-1)?.to ?? from)) / 2;
  const wide = slots.filter((slot) => slot.to - slot.from >= width);
  if (wide.length === 0) {
    const widest = slots.toSorted((a, b) => b.to - b.from - (a.to - a.from))[0];
    return around(widest === undefined ? middle : (widest.from + widest.to) / 2, width);
  }
  const centres = wide.map((slot) =>
    Math.min(Math.max(middle, slot.from + width / 2), slot.to - width / 2),
  );
  const nearest = centres.toSorted((a, b) => Math.abs(a - middle) - Math.abs(b - middle))[0];
  return around(nearest ?? middle, width);
}

function around(centre: number, width: number): Interval {
  return { from: centre - width / 2, to: centre + width / 2 };
}

interface LabelQuestion {
  readonly face: Face;
  readonly laneIndex: number;
  readonly run: Run;
  readonly slots: readonly (readonly Interval[])[];
  readonly counts: readonly Interval[];
  readonly width: number;
}

/** In the first track with room beside its count, else before the run, else in place of its first count. */
function placeLabel(question: LabelQuestion): Interval {
  const { slots, counts, width } = question;
  const inside = slots.flatMap((own, index) => own.flatMap((slot) => besides(slot, counts[index])));
  const room = inside.find(({ from, to }) => to - from >= width);
  if (room !== undefined) return { from: room.from, to: room.from + width };
  const before = beforeRun(question);
  return before ?? counts[0] ?? { from: 0, to: width };
}

/** What a count leaves of a slot. */
function besides(slot: Interval, count: Interval | undefined): readonly Interval[] {
  if (count === undefined || count.to <= slot.from || slot.to <= count.from) return [slot];
  return [
    { from: slot.from, to: count.from - SPACE },
    { from: count.to + SPACE, to: slot.to },
  ];
}

/** The room in a run's lane just before its first mark. */
function beforeRun({ face, laneIndex, run, width }: LabelQuestion): Interval | undefined {
  const first = run.marks[0] ?? run.from;
  const to = mmAt(face.side, first) - SPACE;
  const lanes = face.side.lanes.slice(laneIndex);
  const others = lanes.flatMap(markedBy).filter((position) => position < first);
  const from = others.length === 0 ? 0 : mmAt(face.side, Math.max(...others)) + SPACE;
  return to - from >= width ? { from: to - width, to } : undefined;
}
