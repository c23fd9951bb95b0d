/** A set-up's page in the book: its list is ticked while one draws, and its contents are copied. */
import { sayCount } from "../../../src/issue/words/say-count.ts";
import { ticksOf, withTicks } from "../../../src/view/setup/ticks.ts";
import { openDevice } from "../device/device.ts";
import { ownAddress } from "../ui/load-script.ts";
import { onPress, partOf, theOne } from "../ui/parts.ts";
import { openStatus } from "../ui/status.ts";

const device = openDevice(window, ownAddress());
const list = theOne(document, "[data-setup]", HTMLElement);
const setup = list.dataset.setup ?? "";
const boxes = [...list.querySelectorAll<HTMLInputElement>("input[type=checkbox]")];
const drawn = partOf(document, "drawn");

const show = () => {
  const ticks = ticksOf(device.get("ticks") ?? "", setup);
  for (const box of boxes) box.checked = ticks.has(Number(box.value));
  sayDrawn();
};

show();
device.subscribe("ticks", show);
list.addEventListener("change", () => {
  const ticks = boxes.filter((box) => box.checked).map((box) => Number(box.value));
  device.set("ticks", withTicks(device.get("ticks") ?? "", setup, ticks));
  sayDrawn();
});

const say = openStatus(document);
theOne(document, '[data-do="copy-contents"]', HTMLButtonElement).hidden = false;
onPress(document, "copy-contents", () => {
  const lines = [...partOf(document, "contents").querySelectorAll("li")].map((line) =>
    [...line.children].map((part) => part.textContent).join("\t"),
  );
  void navigator.clipboard.writeText(lines.join("\n")).then(
    () => say("The contents are copied."),
    () => say("Select the lines and copy them: the browser does not let a page do it."),
  );
});

function sayDrawn(): void {
  const count = boxes.filter((box) => box.checked).length;
  drawn.textContent = `${count} of ${sayCount(boxes.length, "page")} drawn.`;
}
