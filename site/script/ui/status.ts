/** Says in the page what a press of a button came to. */
import { partOf } from "./parts.ts";

/** Words for everybody: shown for a while, and read out where pages are read out. */
export function openStatus(page: ParentNode): (words: string) => void {
  const place = partOf(page, "status");
  let timer: ReturnType<typeof setTimeout> | undefined;
  return (words) => {
    clearTimeout(timer);
    place.textContent = words;
    place.classList.toggle("heard", words !== "");
    timer = setTimeout(() => {
      place.textContent = "";
      place.classList.remove("heard");
    }, SHOWN_MS);
  };
}

const SHOWN_MS = 6_000;
