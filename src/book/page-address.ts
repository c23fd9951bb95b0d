/** Where a link on a page leads: relative everywhere, but for the one page that is shown at addresses of its own. */
import { rel } from "./rel.ts";

/** A web space shows this page for whatever is not there, however deep: a relative link from it would lead nowhere. */
const NOT_FOUND = "/404.html";

/** `to` and `from` are written from the book's root; `url` is the book's address, "" where it tells none. */
export function pageAddress(to: string, from: string, url: string): string {
  return from === NOT_FOUND ? url + rel(to, from) : rel(to, from);
}
