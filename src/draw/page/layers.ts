/** The marks of several pages in one order: what lies below on any page lies below on all. */
import type { Mark, PathMark, TextMark } from "../scene.ts";

/** Marks that lie at one height. */
export type Layer = readonly Mark[];

/** One layer of all pages after another, and in it the marks of one role after another. Pages have the same layers. */
export function inLayers(pages: readonly (readonly Layer[])[]): readonly Mark[] {
  return (pages[0] ?? []).flatMap((_, index) => {
    const layer = pages.flatMap((layers) => layers[index] ?? []);
    const roles = [...new Set(layer.map(({ role }) => role))];
    return roles.flatMap((role) => ofOneRole(layer.filter((mark) => mark.role === role)));
  });
}

/** Paths of one look as one path, then the texts. */
function ofOneRole(marks: Layer): Layer {
  const paths = new Map<string, PathMark>();
  const texts: TextMark[] = [];
  for (const mark of marks) {
    if (mark.kind === "text") {
      texts.push(mark);
      continue;
    }
    const look = `${mark.lane ?? ""}:${mark.dash?.join(" ") ?? ""}`;
    const before = paths.get(look);
    paths.set(look, before ? { ...before, d: before.d + mark.d } : mark);
  }
  return [...paths.values(), ...texts];
}
