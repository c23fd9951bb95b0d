/** Straight lines read back from path data, for tests that ask where a drawing has ink. */
import type { Role } from "../../src/draw/role.ts";
import type { Mark, PathMark, Scene, TextMark } from "../../src/draw/scene.ts";

export interface Segment {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

/** All marks of a role that are paths. */
export function pathsOf({ marks }: Pick<Scene, "marks">, role: Role): readonly PathMark[] {
  return marks.filter((mark): mark is PathMark => mark.kind === "path" && mark.role === role);
}

/** All marks of a role that are texts. */
export function textsOf(
  { marks }: Pick<Scene, "marks">,
  ...roles: readonly Role[]
): readonly TextMark[] {
  return marks.filter(
    (mark): mark is TextMark => mark.kind === "text" && roles.includes(mark.role),
  );
}

/** The lines of a path that uses M, L, H, V and Z alone; closing lines are left out. */
export function segmentsOf(mark: Mark): readonly Segment[] {
  if (mark.kind === "text") return [];
  const segments: Segment[] = [];
  let [x, y] = [0, 0];
  for (const [, command = "", rest = ""] of mark.d.matchAll(/([MLHV])([^MLHVZ]*)/g)) {
    const [first = 0, second = 0] = (rest.match(/-?\d+(\.\d+)?/g) ?? []).map(Number);
    const to = {
      M: { x: first, y: second },
      L: { x: first, y: second },
      H: { x: first, y },
      V: { x, y: first },
    }[command];
    if (to === undefined) throw new Error(`no such command: ${command}`);
    if (command !== "M") segments.push({ x1: x, y1: y, x2: to.x, y2: to.y });
    ({ x, y } = to);
  }
  return segments;
}

/** The upright lines of all paths of some roles, from top to bottom, in order along the drawing. */
export function uprights(
  scene: Pick<Scene, "marks">,
  ...roles: readonly Role[]
): readonly Segment[] {
  return roles
    .flatMap((role) => pathsOf(scene, role).flatMap(segmentsOf))
    .filter(({ x1, x2 }) => x1 === x2)
    .map(({ x1, y1, x2, y2 }) => ({ x1, y1: Math.min(y1, y2), x2, y2: Math.max(y1, y2) }))
    .toSorted((a, b) => a.x1 - b.x1 || a.y1 - b.y1);
}
