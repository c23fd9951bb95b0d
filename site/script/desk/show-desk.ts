/** Shows what a recipe comes to: its drawing, what there is to say of it, or its problems beside the last good one. */
import { gridScene } from "../../../src/draw/page/grid-scene.ts";
import { pageScene } from "../../../src/draw/page/page-scene.ts";
import { planJson } from "../../../src/plan/plan-json.ts";
import { sayStaleDrawing } from "../../../src/problem/say/say-stale.ts";
import type { Draw } from "../fit/draw.ts";
import { verdictOf } from "../fit/plan-verdict.ts";
import { misfitReason, tellFit, tellMisfit } from "../fit/telling.ts";
import { partOf, theOne } from "../page/parts.ts";
import type { Queue } from "../page/queue.ts";
import type { ReaderPart } from "../reader/reader-part.ts";
import type { Editor } from "./editor.ts";
import { problemItems, spokenWords } from "./problem-list.ts";
import type { DeskResult } from "./work-out-recipe.ts";

interface Shows {
  readonly draw: Draw;
  readonly queue: Queue;
  readonly reader: ReaderPart;
  /** Another one may take its place while the page is open. */
  readonly editor: () => Editor;
}

/** A function that shows one result after another. */
export function deskShow(page: ParentNode, shows: Shows): (result: DeskResult) => void {
  const [plate, verdict] = [partOf(page, "plate"), partOf(page, "verdict")];
  const [telling, problems] = [partOf(page, "telling"), partOf(page, "problems")];
  const data = theOne(page, "#plan-data", HTMLScriptElement);
  const { draw, queue, reader, editor } = shows;
  return (result) => {
    plate.classList.toggle("stale", !result.ok);
    telling.hidden = !result.ok;
    if (!result.ok) {
      const { problems: found } = result;
      verdict.dataset.state = "misfit";
      verdict.textContent = sayStaleDrawing(found.length);
      problems.replaceChildren(
        ...problemItems({
          problems: found,
          say: reader.sayProblem,
          goTo: (place) => editor().goTo(place),
        }),
      );
      markSoon(result);
      return;
    }
    const { plan, recipe, notebook } = result;
    const { state, words } = verdictOf(plan);
    verdict.dataset.state = state;
    verdict.textContent = plan.fits ? words : `${words}. ${misfitReason(plan, recipe)}`;
    data.textContent = planJson(plan);
    draw.show(plate, plan.fits ? pageScene({ plan, recipe, notebook }) : gridScene(notebook));
    problems.replaceChildren();
    markSoon(result);
    queue.put("telling", () => {
      telling.replaceChildren(...(plan.fits ? tellFit(plan, recipe) : tellMisfit(plan, recipe)));
      return false;
    });
  };

  /** An editor may not be changed while it tells of a change. */
  function markSoon(result: DeskResult): void {
    queue.put("marks", () => {
      const found = result.ok ? [] : result.problems;
      editor().mark(
        found.map((problem) => ({
          place: problem.at,
          words: spokenWords(reader.sayProblem(problem)),
        })),
      );
      return false;
    });
  }
}
