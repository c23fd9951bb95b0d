/** A list of pages to tick while one draws, kept on the device. */
import { sayCount } from "../../../src/issue/words/say-count.ts";
import { ticksOf, withTicks } from "../../../src/view/setup/ticks.ts";
import type { Device } from "../device/device.ts";

interface Ticking {
  readonly list: HTMLElement;
  /** Where it is said how many are ticked. */
  readonly drawn: HTMLElement;
  /** What the set-up is called among the ticks now. */
  readonly name: () => string;
}

/** Follows what is ticked, here and in other tabs; what it gives is to be called when the list is another one. */
export function bindTicks(device: Device, { list, drawn, name }: Ticking): () => void {
  const boxes = () => [...list.querySelectorAll<HTMLInputElement>("input[type=checkbox]")];
  const sayDrawn = () => {
    const all = boxes();
    const count = all.filter((box) => box.checked).length;
    drawn.textContent = `${count} of ${sayCount(all.length, "page")} drawn.`;
  };
  const show = () => {
    const ticks = ticksOf(device.get("ticks") ?? "", name());
    for (const box of boxes()) box.checked = ticks.has(Number(box.value));
    sayDrawn();
  };
  device.subscribe("ticks", show);
  list.addEventListener("change", () => {
    const ticks = boxes()
      .filter((box) => box.checked)
      .map((box) => Number(box.value));
    device.set("ticks", withTicks(device.get("ticks") ?? "", name(), ticks));
    sayDrawn();
  });
  return show;
}
