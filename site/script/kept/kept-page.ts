/** The page of all that is kept on the device: puts its parts together. */
import { showPersistence } from "../app/show-persistence.ts";
import { openClearableDevice } from "../device/device.ts";
import { subscribeFiles } from "../device/kept-files.ts";
import { showMine } from "../device/my-notebook.ts";
import { folderPart } from "../lazy/folder/folder-part.ts";
import { keepParts } from "../offline/prefetch-scripts.ts";
import { openQueue } from "../ui/idle-queue.ts";
import { ownAddress, scriptLoader } from "../ui/load-script.ts";
import { enhancePart, onPress, partOf } from "../ui/parts.ts";
import { saveFile } from "../ui/save-file.ts";
import { openDraw } from "../ui/show-drawing.ts";
import { openStatus } from "../ui/status.ts";
import { bindClearing } from "./bind-clearing.ts";
import { bindOpening } from "./bind-opening.ts";
import { keptList } from "./kept-list.ts";
import { bindLookingBack } from "./looking-back.ts";
import { showCalendars } from "./show-calendars.ts";

const script = ownAddress();
const load = scriptLoader(script);
void openPage().catch((error: unknown) => {
  console.error(error);
  const notice = partOf(document, "notice");
  notice.textContent = "What is kept could not be listed: a part of this page is missing.";
  notice.hidden = false;
  partOf(document, "kept-page").hidden = true;
});

async function openPage(): Promise<void> {
  const device = openClearableDevice(window, script);
  const [part] = await Promise.all([folderPart(window, load), load("../fit/recipe/texts.js")]);
  const around = {
    device,
    book: window.spanbookContent,
    texts: window.spanbookTexts ?? {},
  };
  const say = openStatus(document);
  const [draw, queue] = [openDraw(window), openQueue(window)];
  const lookBack = bindLookingBack(document, { part, around, load, draw, queue });
  const list = keptList(document, { part, around, say }, lookBack);
  const show = () => {
    list.show();
    showCalendars(document, device, show);
    showMine(document, device);
    showPersistence(document, device);
  };
  enhancePart(document, "kept-page");
  show();
  subscribeFiles(device, show);
  for (const name of ["notebook", "strip", "setup", "recipe", "calendars"] as const)
    device.subscribe(name, show);
  onPress(document, "save-all", () => {
    const { bytes, leftOut } = part.zip(around);
    saveFile("my-layouts", "zip", new Uint8Array(bytes));
    say(
      leftOut.length === 0
        ? "The zip is made."
        : `The zip is made without ${leftOut.map((title) => `“${title}”`).join(", ")}, which would not build: what they need is gone.`,
    );
  });
  bindClearing(document, { device, show, say });
  bindOpening(document, { part, around, say, show });
  keepParts(window, script, ["folder.js", "uses.js", "../fit/recipe/texts.js"]);
}
