/** Clears all that is kept for the book, and brings it back as long as the page is open. */
import type { ClearableDevice } from "../device/device.ts";
import { onPress } from "../ui/parts.ts";

interface Clearing {
  readonly device: ClearableDevice;
  readonly show: () => void;
  readonly say: (words: string) => void;
}

/** What no page of today knows is kept, too, and brought back as it was. */
export function bindClearing(page: Document, { device, show, say }: Clearing): void {
  let restore: (() => void) | undefined;
  const turn = (isCleared: boolean) => {
    for (const [doing, isHidden] of [
      ["clear", isCleared],
      ["restore", !isCleared],
    ] as const) {
      const button = page.querySelector<HTMLElement>(`[data-do="${doing}"]`);
      if (!button) continue;
      button.hidden = isHidden;
      if (!isHidden) button.focus();
    }
    show();
  };
  onPress(page, "clear", () => {
    restore = device.clear();
    turn(true);
    say("Nothing is kept on this device any more: no layout, no notebook, no setting.");
  });
  onPress(page, "restore", () => {
    restore?.();
    turn(false);
    say("Everything is kept as before.");
  });
}
