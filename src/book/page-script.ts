/** Values that a page's scripts find in their window: as classic scripts, since a page on disk may load nothing else. */

/** A script that gives a value to the page under a name. */
export function pageScript(name: string, value: unknown): string {
  return `window.${name}=${scriptValue(value)};\n`;
}

/** JSON is a script's value as it is, but for the endless maximum of a track: no number of JSON is that large. */
function scriptValue(value: unknown): string {
  const json = JSON.stringify(value, (_, part) =>
    part === Number.POSITIVE_INFINITY ? ENDLESS : part,
  );
  return json.replaceAll(JSON.stringify(ENDLESS), "1e999");
}

/** No written text has this character in it. */
const ENDLESS = "\u0000";
