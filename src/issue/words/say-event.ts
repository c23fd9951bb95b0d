/** The words for an event of a calendar file. */

/** `09:30 Seed swap`, or `Seed swap` without its time. */
export function sayEvent(
  { title, time }: { readonly title: string; readonly time?: string },
  hasTime: boolean,
): string {
  const words = title === "" ? "Untitled" : title;
  return time !== undefined && hasTime ? `${time} ${words}` : words;
}
