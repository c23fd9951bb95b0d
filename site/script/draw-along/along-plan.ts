/** Drawing along what a page works out by itself: whatever it shows can be drawn stroke by stroke. */
import { sayCounting, sayOrder } from "../../../src/issue/words/say-stroke.ts";
import type { Notebook } from "../../../src/notebook/notebook.ts";
import { drawOrder } from "../../../src/plan/order/draw-order.ts";
import type { Plan } from "../../../src/plan/plan.ts";
import { marksTables } from "../../../src/view/draw-along/marks-tables.ts";
import type { Device } from "../device/device.ts";
import type { Queue } from "../ui/idle-queue.ts";
import { onPress, partOf, theOne } from "../ui/parts.ts";
import { bindAlong, keptHand } from "./bind-draw-along.ts";
import { writeMarks } from "./marks-table.ts";
import { writeList } from "./step-list.ts";
import { openStepper, type Stepper } from "./stepper.ts";

/** What is drawn. */
export interface DrawnPlan {
  readonly plan: Plan;
  readonly notebook: Notebook;
}

export interface PlanStore {
  readonly notebook: Notebook;
  /** Tells of each other drawing. */
  subscribe(show: (drawn: DrawnPlan) => void): void;
}

/** Follows the store: the strokes are worked out when there is time, and at the latest when they are to begin. */
export function bindDrawAlong(
  window: Window,
  store: PlanStore,
  { queue, device }: { readonly queue: Queue; readonly device: Device },
): void {
  const whole = theOne(window.document, ".drawn", HTMLElement);
  const panel = partOf(whole, "along");
  const strokes = partOf(panel, "strokes");
  const { axes } = store.notebook;
  const stepper = openStepper({ axes, pages: [] }, keptHand(device));
  stepper.subscribe(({ steps }, before) => {
    if (steps !== before.steps) writeList(strokes, steps);
  });
  let due: DrawnPlan | undefined;
  const take = () => {
    if (due) takeShown(due, { whole, panel, stepper });
    due = undefined;
  };
  onPress(panel, "start", take);
  bindAlong(window, { whole, panel }, stepper, device);
  store.subscribe((drawn) => {
    due = drawn;
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
function takeShown(drawn: DrawnPlan, { whole, panel, stepper }: AlongParts): void {
  const plan = planOf(drawn);
  stepper.setPlan(plan);
  const { steps } = stepper.state();
  const strokes = steps.filter(({ kind }) => kind === "stroke").length;
  panel.hidden = strokes === 0;
  whole.classList.toggle("double", plan.pages.length > 1);
  partOf(panel, "order-words").textContent = sayOrder(strokes);
  partOf(panel, "counting").textContent = sayCounting(plan.axes);
  const orders = plan.pages.map((page) => drawOrder(page, drawn.notebook));
  writeMarks(partOf(panel, "marks-tables"), marksTables(orders, drawn.notebook));
}

function planOf({ plan, notebook }: DrawnPlan) {
  return { axes: notebook.axes, pages: plan.fits ? plan.pages : [] };
}
