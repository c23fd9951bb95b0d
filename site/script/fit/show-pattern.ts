/** The chosen pattern on the notebook: its drawing, how it comes out, and what there is to say of it. */
import { gridScene } from "../../../src/draw/page/grid-scene.ts";
import { pageScene } from "../../../src/draw/page/page-scene.ts";
import type { Scene } from "../../../src/draw/scene.ts";
import { sayStaleDrawing } from "../../../src/issue/words/say-stale.ts";
import { planJson } from "../../../src/plan/plan-json.ts";
import { writeRecipeLink } from "../../../src/view/address/fit-address.ts";
import { statusWords } from "../../../src/view/pattern/plan-status.ts";
import { misfitReason } from "../../../src/view/pattern/plan-summary.ts";
import { titledRecipe } from "../../../src/view/pattern/span-words.ts";
import type { Queue } from "../ui/idle-queue.ts";
import { partOf, theOne } from "../ui/parts.ts";
import { summaryElements } from "../ui/plan-summary.ts";
import type { Draw } from "../ui/show-drawing.ts";
import { type FitPageState, type FitStore, isSameDrawing } from "./fit-store.ts";

interface Shows {
  readonly draw: Draw;
  readonly queue: Queue;
}

/** The drawing of what is shown; where the pattern does not fit, the notebook itself. */
export function shownScene(state: FitPageState): Scene {
  const { plan, notebook, events } = state;
  return plan.fits
    ? pageScene({ plan, recipe: titledRecipe(state), notebook, events })
    : gridScene(notebook);
}

/** Follows the store: drawing, status and data at once, the words below when there is time. */
export function bindPage(page: ParentNode, store: FitStore, { draw, queue }: Shows): void {
  const pattern = theOne(page, "#pattern", HTMLSelectElement);
  const [plate, status, summary] = [
    partOf(page, "plate"),
    partOf(page, "plan-status"),
    partOf(page, "plan-summary"),
  ];
  const data = theOne(page, "#plan-data", HTMLScriptElement);
  const link = theOne(page, '[data-part="make-yours"]', HTMLAnchorElement);
  let last: FitPageState | undefined;
  pattern.addEventListener("input", () => store.update({ pattern: pattern.value }));
  store.subscribe((state) => {
    const { plan, recipe, fit } = state;
    pattern.value = fit.pattern;
    link.hash = writeRecipeLink(fit);
    showStatus(status, state);
    plate.classList.toggle("stale", faultsOf(state) > 0);
    summary.hidden = faultsOf(state) > 0;
    if (last && isSameDrawing(last, state)) return;
    last = state;
    data.textContent = planJson(plan);
    plate.classList.toggle("spread-wide", plan.fits && plan.pages.length > 1);
    draw.show(plate, shownScene(state));
    queue.put("summary", () => {
      summary.replaceChildren(...summaryElements(plan, recipe));
      return false;
    });
  });
}

/** Of what is drawn, or that it is an old one; words that stand there already are not read out again. */
function showStatus(place: HTMLElement, state: FitPageState): void {
  const { plan, recipe } = state;
  const { state: outcome, words } = statusWords(plan);
  const faulty = faultsOf(state);
  const fresh = plan.fits ? words : `${words}. ${misfitReason(plan, recipe)}`;
  const said = faulty > 0 ? sayStaleDrawing(faulty) : fresh;
  if (place.textContent !== said) place.textContent = said;
  place.dataset.state = faulty > 0 ? "misfit" : outcome;
}

/** How many fields say something that the drawing does not show. */
function faultsOf({ errors }: FitPageState): number {
  return errors.notebook.length + errors.dates.length;
}
