/** Shows what a recipe comes to: its drawing, what there is to say of it, or its problems beside the last good one. */
import { gridScene } from "../../../src/draw/page/grid-scene.ts";
import { pageScene } from "../../../src/draw/page/page-scene.ts";
import type { Issue } from "../../../src/issue/facts/issue.ts";
import { sayStaleDrawing } from "../../../src/issue/words/say-stale.ts";
import { planJson } from "../../../src/plan/plan-json.ts";
import { statusWords } from "../../../src/view/pattern/plan-status.ts";
import { misfitReason } from "../../../src/view/pattern/plan-summary.ts";
import { titledRecipe } from "../../../src/view/pattern/span-words.ts";
import type { Editor } from "../lazy/editor/editor-part.ts";
import type { ReaderPart } from "../lazy/reader/reader-part.ts";
import type { DisabledButtons } from "../ui/disable-buttons.ts";
import type { Queue } from "../ui/idle-queue.ts";
import { partOf, theOne } from "../ui/parts.ts";
import { summaryElements } from "../ui/plan-summary.ts";
import type { Draw } from "../ui/show-drawing.ts";
import { issueItems, spokenWords } from "./issue-list.ts";
import type { RecipeResult } from "./plan-recipe.ts";
import type { RecipeStore } from "./recipe-store.ts";

interface Shows {
  readonly draw: Draw;
  readonly queue: Queue;
  readonly reader: ReaderPart;
  /** Another one may take its place while the page is open. */
  readonly editor: () => Editor;
}

type Planned = Extract<RecipeResult, { ok: true }>;

/** A function that shows one result after another. */
export function recipeView(page: ParentNode, shows: Shows): (result: RecipeResult) => void {
  const parts = recipeParts(page);
  return (result) => {
    parts.plate.classList.toggle("stale", !result.ok);
    parts.summary.hidden = !result.ok;
    if (result.ok) {
      showPlan(parts, result, shows.draw);
      markSoon([], shows);
      summarySoon(parts.summary, result, shows.queue);
    } else {
      showIssues(parts, result.issues, shows);
      markSoon(result.issues, shows);
    }
  };
}

/** While the days cannot be read, the drawing is an old one, and nothing of it is printed or saved. */
export function bindFaultyDates(
  page: ParentNode,
  store: RecipeStore,
  disable: DisabledButtons,
): void {
  const form = theOne(page, '[data-part="dates"]', HTMLFormElement);
  const plate = partOf(page, "plate");
  store.subscribe(({ errors, result }) => {
    plate.classList.toggle("stale", errors.length > 0 || !result.ok);
    disable(form, errors);
  });
}

interface RecipeParts {
  readonly plate: HTMLElement;
  readonly status: HTMLElement;
  readonly summary: HTMLElement;
  readonly issues: HTMLElement;
  readonly data: HTMLScriptElement;
}

function recipeParts(page: ParentNode): RecipeParts {
  return {
    plate: partOf(page, "plate"),
    status: partOf(page, "plan-status"),
    summary: partOf(page, "plan-summary"),
    issues: partOf(page, "problems"),
    data: theOne(page, "#plan-data", HTMLScriptElement),
  };
}

function showPlan(
  { plate, status, issues, data }: RecipeParts,
  planned: Planned,
  draw: Draw,
): void {
  const { plan, notebook } = planned;
  const recipe = titledRecipe(planned);
  const { state, words } = statusWords(plan);
  status.dataset.state = state;
  status.textContent = plan.fits ? words : `${words}. ${misfitReason(plan, recipe)}`;
  data.textContent = planJson(plan);
  draw.show(plate, plan.fits ? pageScene({ plan, recipe, notebook }) : gridScene(notebook));
  issues.replaceChildren();
}

/** The drawing stays as it is. */
function showIssues(
  { status, issues }: RecipeParts,
  found: readonly Issue[],
  { reader, editor }: Shows,
): void {
  status.dataset.state = "misfit";
  status.textContent = sayStaleDrawing(found.length);
  issues.replaceChildren(
    ...issueItems({
      issues: found,
      say: reader.sayIssue,
      goTo: (place) => editor().goTo(place),
    }),
  );
}

/** An editor may not be changed while it tells of a change. */
function markSoon(found: readonly Issue[], { queue, reader, editor }: Shows): void {
  queue.put("marks", () => {
    editor().mark(
      found.map((issue) => ({
        place: issue.at,
        words: spokenWords(reader.sayIssue(issue)),
      })),
    );
    return false;
  });
}

function summarySoon(summary: HTMLElement, { plan, recipe }: Planned, queue: Queue): void {
  queue.put("summary", () => {
    summary.replaceChildren(...summaryElements(plan, recipe));
    return false;
  });
}
