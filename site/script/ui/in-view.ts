/** Tells of things in a page when they come into view, or nearly. */

export interface Sight<Thing> {
  /** The things in view, to be drawn anew; those out of view are told of when they come into it. */
  seenAgain(): readonly Thing[];
}

/** Tells of each thing once, by its element. */
export function openSight<Thing>(
  things: ReadonlyMap<Element, Thing>,
  tell: (thing: Thing) => void,
): Sight<Thing> {
  const seen = new Set<Thing>();
  const stale = new Set<Thing>(things.values());
  const observer = new IntersectionObserver(
    (entries) => {
      for (const { target, isIntersecting } of entries) {
        const thing = things.get(target);
        if (thing === undefined) continue;
        if (!isIntersecting) seen.delete(thing);
        else seen.add(thing);
        if (isIntersecting && stale.delete(thing)) tell(thing);
      }
    },
    { rootMargin: "300px" },
  );
  for (const element of things.keys()) observer.observe(element);
  return {
    seenAgain: () => {
      for (const thing of things.values()) stale.add(thing);
      for (const thing of seen) stale.delete(thing);
      return [...seen];
    },
  };
}
