/** What the book's calendar files have on the days of a set-up. */
import { type DatedEvent, eventsIn } from "../../../events/events-in.ts";
import type { Content } from "../../content/load-content.ts";

/** None where there is no such set-up. */
export function setupEvents(slug: string, { calendars, setups }: Content): readonly DatedEvent[] {
  const setup = setups.find((one) => one.slug === slug);
  return setup ? eventsIn(calendars, setup.dates).events : [];
}
