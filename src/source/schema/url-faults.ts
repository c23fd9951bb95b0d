/** Which addresses a book can have: those of a folder on the web, to which the names of pages can be added. */
import type { AddressFault } from "../../issue/facts/shape-issue.ts";

/** Everything that keeps a text from being such an address; none where it is one. */
export function addressFaults(text: string): readonly AddressFault[] {
  const [path = ""] = text.split(/[?#]/);
  const checks: readonly (readonly [fault: AddressFault, isThere: boolean])[] = [
    ["scheme", !/^https?:\/\//i.test(text)],
    ["length", text.length > LONGEST],
    ["space", /\s/.test(text)],
    ["user", /^\w+:\/\/[^/?#]*@/.test(text)],
    ["query", text.includes("?")],
    ["fragment", text.includes("#")],
    ["page", /^\w+:\/\/[^/]*\/.*\.(?:html?|php)\/*$/is.test(path) && !FRONT_PAGE.test(path)],
  ];
  const faults = checks.filter(([, isThere]) => isThere).map(([fault]) => fault);
  if (faults.length > 0 || hasHost(text)) return faults;
  return hasHost(text.replace(PORT, "$1")) ? ["port"] : ["host"];
}

/** What follows the last colon before the path, unless it is within the brackets of an address of numbers. */
const PORT = /^(\w+:\/\/[^/]*):[^/:\]]*/;

/** Who copies the book's address from a browser may have its front page's, which is as good. */
const FRONT_PAGE = /\/index\.html$/i;

const LONGEST = 500;

function hasHost(text: string): boolean {
  return /^\w+:\/\/[^/\p{C}][^\p{C}]*$/u.test(text) && URL.canParse(text);
}
