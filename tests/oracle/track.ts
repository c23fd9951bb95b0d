/** Short ways to write a split down in a test. */
import type { Question, TrackSize } from "../../src/divide/question.ts";

const HUNDREDTHS = 100;

interface Limits {
  readonly min?: number;
  readonly max?: number;
}

/** A share track; the share is written as an author writes it, with at most two decimals. */
export function shareTrack(
  share: number,
  { min = 1, max = Number.POSITIVE_INFINITY }: Limits = {},
): TrackSize {
  return { kind: "share", weight: Math.round(share * HUNDREDTHS), min, max };
}

export function fixedTrack(steps: number): TrackSize {
  return { kind: "steps", steps };
}

/** A split with one gap size, or with a range of them. */
export function split(
  length: number,
  tracks: readonly TrackSize[],
  gap: number | readonly [number, number] = 0,
): Question {
  const [min, max] = typeof gap === "number" ? [gap, gap] : gap;
  return { length, tracks, gap: { min, max } };
}

/** So many tracks of share 1. */
export function equalTracks(count: number): readonly TrackSize[] {
  return Array.from({ length: count }, () => shareTrack(1));
}

/** A split in one line, for a report. */
export function written({ length, tracks, gap }: Question): string {
  const each = tracks.map((track) =>
    track.kind === "steps"
      ? `${track.steps}`
      : `${track.weight / HUNDREDTHS}fr[${track.min},${track.max}]`,
  );
  return `${length} steps, gap ${gap.min}-${gap.max}: ${each.join(" ")}`;
}
