/** The script of a pattern's page: its drawing stroke by stroke, what the drawing shows, and its marks to copy. */
import { readAlongData } from "../../../src/view/draw-along/plan-data.ts";
import { bindAddToStrip } from "../app/add-to-strip.ts";
import { type Device, openDevice } from "../device/device.ts";
import { addToMyStrip } from "../device/my-strip.ts";
import { ownNotebook } from "../device/own-notebook.ts";
import { keepParts } from "../offline/prefetch-scripts.ts";
import { ownAddress, scriptLoader } from "../ui/load-script.ts";
import { partOf, theOne } from "../ui/parts.ts";
import { bindAlong, keptHand } from "./bind-draw-along.ts";
import { bindLivePattern } from "./live-pattern.ts";
import { bindCopying } from "./marks-table.ts";
import { bindPageAddress } from "./page-address.ts";
import { bindLiveDownloads } from "./save-live.ts";
import { openSetupWay } from "./setup-way.ts";
import { writeList } from "./step-list.ts";
import { openStepper } from "./stepper.ts";

const own = ownAddress();
const device = openDevice(window, own);
bindSwitches(document, device);
bindCopying(document);
startAlong(window, device, scriptLoader(own));
bindStrip(document, device);

/** The button stands where the pattern fits; elsewhere it waits with its part. */
function bindStrip(page: Document, device: Device): void {
  const pattern = page.querySelector<HTMLElement>("[data-pattern][data-do]")?.dataset.pattern;
  if (pattern) bindAddToStrip(page, () => addToMyStrip(device, { across: pattern, down: pattern }));
}

/** Takes the plan from the page itself, and plans for the keeper's own notebook, and for picked days where the pattern has any. */
export function startAlong(
  window: Window,
  device: Device,
  load: (name: string) => Promise<void>,
): void {
  const { document } = window;
  const panel = document.querySelector<HTMLElement>("[data-along]");
  if (!panel) return;
  const whole = partOf(document, "pattern");
  const mine = ownNotebook(document, device);
  const built = panel.dataset.along ?? "";
  const stepper = openStepper(readAlongData(built), keptHand(device));
  const strokes = partOf(panel, "strokes");
  stepper.subscribe(({ steps }, before) => {
    if (steps !== before.steps) writeList(strokes, steps);
  });
  bindAlong(window, { whole, panel }, stepper, device);
  const title = theOne(panel, "#along", HTMLElement);
  const words = [partOf(panel, "order-words"), partOf(panel, "counting")] as const;
  const [builtOrder, builtCounting, builtTitle] = [...words, title].map((each) => each.textContent);
  const live = bindLivePattern(window, {
    whole,
    own: mine,
    load,
    device,
    shown: (view) => {
      stepper.setPlan(readAlongData(view ? (view.along?.data ?? NO_STEPS) : built));
      const [order, counting] = words;
      order.textContent = view ? (view.along?.order ?? "") : (builtOrder ?? "");
      counting.textContent = view ? (view.along?.counting ?? "") : (builtCounting ?? "");
      const isEmpty = stepper.state().steps.length === 0;
      title.textContent = view ? (isEmpty ? "The drawing" : "Draw along") : (builtTitle ?? "");
      for (const part of panel.querySelectorAll<HTMLElement>("[data-steps]")) part.hidden = isEmpty;
    },
    said: (dates) => say(dates),
  });
  const showWay = openSetupWay(panel, device, () => stepper.stop());
  const root = document.documentElement.classList;
  root.add("turns");
  const say = bindPageAddress(window, stepper, {
    take: (said) => {
      showWay(said.setup);
      return live.take(said).finally(() => root.remove("turning"));
    },
    usual: mine?.said ?? "",
  });
  keepParts(window, own, ["dates.js", "names.js", "calendar.js", "../fit/book.js"]);
  bindLiveDownloads(document, { device, load, view: live.view });
}

/** Of a page on which nothing is drawn. */
const NO_STEPS = '{"grids":[[],[]],"pages":[]}';

/** Puts the switches as they were left, and keeps every change. What is kept are the names of those that are off. */
export function bindSwitches(page: Document, device: Device): void {
  const boxes = [...page.querySelectorAll<HTMLInputElement>(".switches input")];
  const off = () => (device.get("drawing") ?? "").split(" ").filter((name) => name !== "");
  for (const box of boxes) {
    box.checked = !off().includes(box.name);
    box.addEventListener("change", () => {
      // Read anew: another page or tab may have switched something else meanwhile.
      const others = off().filter((name) => name !== box.name);
      device.set("drawing", [...others, ...(box.checked ? [] : [box.name])].join(" "));
    });
  }
}
