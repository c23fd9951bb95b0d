/** A split's reason in words and numbers. */
import type { SplitReason } from "../facts/split-reason.ts";

/** One or two sentences, such as "26 steps, 3 parts, 2 gaps of 1: 24 ÷ 3 = 8, nothing left over." */
export function saySplitReason(reason: SplitReason): string {
  const given = [steps(reason.length), trackWords(reason)];
  if (reason.tracks > 1 && reason.gap > 0) given.push(`${gapWords(reason)} of ${reason.gap}`);
  if (reason.fixed > 0 && reason.kinds.length > 0) given.push(`${reason.fixed} fixed`);
  const sharing = sharingWords(reason);
  const result = sharing === "" ? leftoverWords(reason) : `${sharing}, ${leftoverWords(reason)}`;
  return [`${given.join(", ")}: ${result}.`, rangeWords(reason), evenWords(reason)]
    .filter((sentence) => sentence !== "")
    .join(" ");
}

function trackWords({ tracks }: SplitReason): string {
  return tracks === 1 ? "1 part" : `${tracks} parts`;
}

function gapWords({ tracks }: SplitReason): string {
  return tracks === 2 ? "1 gap" : `${tracks - 1} gaps`;
}

function sharingWords({ kinds, shared, fixed, leftover }: SplitReason): string {
  const [first, ...others] = kinds;
  if (!first) return `${fixed} fixed`;
  if (others.length === 0) {
    if (first.count === 1)
      return leftover > 0 ? `${first.size} of ${shared}` : `all ${shared} to one`;
    const remainder = shared - first.count * first.size;
    if (remainder === 0) return `${shared} ÷ ${first.count} = ${first.size}`;
    return `${shared} ÷ ${first.count} is ${first.size} each`;
  }
  const parts = kinds.map(({ count, weight, size }) => {
    const each = count > 1 ? `${count} × ${size}` : `${size}`;
    return `${each} for share ${weight / 100}`;
  });
  return `${shared} shared out as ${parts.join(", ")}`;
}

const PLACES = {
  end: "at the end",
  start: "at the start",
  centre: "half before and half after",
  gaps: "given to the gaps",
  parts: "given to the parts",
} as const;

function leftoverWords({ leftover, placing, taker }: SplitReason): string {
  if (leftover === 0) return "nothing left over";
  return `${leftover} left over, ${placeWords(placing, leftover, taker)}`;
}

/** Where the steps that are left over went, such as `given to “Week”`. */
export function leftoverPlace({ placing, taker }: SplitReason): string {
  if (placing === "centre") return "before and after";
  if (placing !== "track") return PLACES[placing];
  return taker === "" ? "given to one part" : `given to “${taker}”`;
}

/** Of an odd number the centre has the larger half behind it. */
function placeWords(placing: SplitReason["placing"], leftover: number, taker: string): string {
  if (placing === "track") return `given to ${taker}`;
  if (placing !== "centre" || leftover % 2 === 0) return PLACES[placing];
  const before = Math.floor(leftover / 2);
  return `${before} before and ${leftover - before} after`;
}

function rangeWords({ gapRange, gap, tracks }: SplitReason): string {
  if (gapRange.min === gapRange.max || tracks < 2) return "";
  return `Of the gaps from ${gapRange.min} to ${gapRange.max}, ${gap} serves best.`;
}

function evenWords({ evenGaps, evenCounts }: SplitReason): string {
  const ways: string[] = [];
  if (evenGaps.length > 0) ways.push(`a gap of ${evenGaps.join(" or ")}`);
  if (evenCounts.length > 0) ways.push(`${evenCounts.join(" or ")} parts`);
  return ways.length === 0 ? "" : `${capital(ways.join(", or "))} would leave nothing over.`;
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

function steps(count: number): string {
  return count === 1 ? "1 step" : `${count} steps`;
}
