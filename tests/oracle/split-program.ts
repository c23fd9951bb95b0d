/** A split as an integer program: what a general solver makes of the first of the four rules. */
import type { Question, ShareSize } from "../../src/divide/question.ts";
import { isAlike } from "./brute-force.ts";
import type { Program, Sum } from "./integer-program.ts";

/** A split as a program: the gap and each track are whole variables, alike tracks equal; as much is used as can be. */
export function fullest({ length, tracks, gap }: Question): Program {
  const fixed = tracks.reduce((so, track) => so + (track.kind === "steps" ? track.steps : 0), 0);
  const shares = tracks.filter((track) => track.kind === "share");
  const used: Sum = [[tracks.length - 1, "gap"], ...shares.map((_, i) => [1, `size${i}`] as const)];
  const alike = shares.flatMap((track, i) => {
    const first = shares.findIndex((other) => isAlike(other, track));
    const equal: Sum = [
      [1, `size${i}`],
      [-1, `size${first}`],
    ];
    return first < i ? [[equal, "=", 0] as const] : [];
  });
  return {
    goal: "Maximize",
    of: used,
    where: [[used, "<=", length - fixed], ...alike],
    bounds: new Map([
      ["gap", [gap.min, gap.max]],
      ...shares.map((track, i) => [`size${i}`, limitsOf(track, length)] as const),
    ]),
  };
}

function limitsOf({ min, max }: ShareSize, length: number): readonly [number, number] {
  return [min, Math.max(min, Math.min(max, length))];
}
