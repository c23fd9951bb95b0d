/** Where the title stands: in the editor, and on the drawing. */
import { KEYS } from "../drivers/engine.ts";
import type { Hand } from "../hand.ts";

/** From wherever in the text to the end of its second line. */
export const TO_THE_TITLE = KEYS.up.repeat(40) + KEYS.down + KEYS.end;

/** What the drawing is called, once the editor is there. */
export function titleDrawn(hand: Hand): Promise<string> {
  return hand.until(
    () =>
      document.querySelector(".editor-host") &&
      document.querySelector(".plate svg > title")?.textContent,
  );
}
