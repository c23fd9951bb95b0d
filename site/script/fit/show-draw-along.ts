/** Drawing along on the keeper's own notebook: whatever the page shows can be drawn stroke by stroke. */
import { sayCounting, sayOrder } from "../../../src/issue/words/say-stroke.ts";
import { drawOrder } from "../../../src/plan/order/draw-order.ts";
import { marksTables } from "../../../src/view/draw-along/marks-tables.ts";
import type { Device } from "../device/device.ts";
import { bindAlong, keptHand } from "../draw-along/bind-draw-along.ts";
import { writeMarks } from "../draw-along/marks-table.ts";
import { writeList } from "../draw-along/step-list.ts";
import { openStepper, type Stepper } from "../draw-along/stepper.ts";
import type { Queue } from "../ui/idle-queue.ts";
import { onPress, partOf, theOne } from "../ui/parts.ts";
import type { FitPageState, FitStore } from "./fit-store.ts";

/** Follows the store: the strokes are worked out when there is time, and at the latest when they are to begin. */
export function bindDrawAlong(
  window: Window,
  store: FitStore,
  { queue, device }: { readonly queue: Queue; readonly device: Device },
): void {
  const whole = theOne(window.document, ".drawn", HTMLElement);
  const panel = partOf(whole, "along");
  const strokes = partOf(panel, "strokes");
  const { axes } = store.state().notebook;
  const stepper = openStepper({ axes, pages: [] }, keptHand(device));
  stepper.subscribe(({ steps }, before) => {
    if (steps !== before.steps) writeList(strokes, steps);
  });
  let due: FitPageState | undefined;
  const take = () => {
    if (due) takeShown(due, { whole, panel, stepper });
    due = undefined;
  };
  onPress(panel, "start", take);
  bindAlong(window, { whole, panel }, stepper, device);
  let last: FitPageState["fit"] | undefined;
  store.subscribe((state) => {
    const { fit } = state;
    if (last?.notebook === fit.notebook && last.pattern === fit.pattern) return;
    last = fit;
    due = state;
    // An address that somebody sets while drawing brings another page.
    if (stepper.state().place !== undefined) take();
    queue.put("along", () => {
      take();
      return false;
    });
  });
}

interface AlongParts {
  readonly whole: HTMLElement;
  readonly panel: HTMLElement;
  readonly stepper: Stepper;
}

/** Nothing is drawn along where the pattern does not fit. */
function takeShown(state: FitPageState, { whole, panel, stepper }: AlongParts): void {
  const plan = planOf(state);
  stepper.setPlan(plan);
  const { steps } = stepper.state();
  const strokes = steps.filter(({ kind }) => kind === "stroke").length;
  panel.hidden = strokes === 0;
  whole.classList.toggle("double", plan.pages.length > 1);
  partOf(panel, "order-words").textContent = sayOrder(strokes);
  partOf(panel, "counting").textContent = sayCounting(plan.axes);
  const orders = plan.pages.map((page) => drawOrder(page, state.notebook));
  writeMarks(partOf(panel, "marks-tables"), marksTables(orders, state.notebook));
}

function planOf({ plan, notebook }: FitPageState) {
  return { axes: notebook.axes, pages: plan.fits ? plan.pages : [] };
}
