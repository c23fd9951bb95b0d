/** The recipe page's buttons: the recipe's file, its drawing and its plan, and the link. */
import { pageScene } from "../../../src/draw/page/page-scene.ts";
import { planJson } from "../../../src/plan/plan-json.ts";
import { titledRecipe } from "../../../src/view/pattern/span-words.ts";
import { copyLink } from "../ui/copy-link.ts";
import { onPress, theOne } from "../ui/parts.ts";
import { saveFile } from "../ui/save-file.ts";
import type { Draw } from "../ui/show-drawing.ts";
import { recipeFileName } from "./bind-printing.ts";
import type { RecipeStore } from "./recipe-store.ts";

interface Saving {
  readonly draw: Draw;
  readonly say: (words: string) => void;
}

/** The file is saved as it is written, right or wrong; drawing and plan only where it is right. */
export function bindRecipeSaving(page: Document, store: RecipeStore, { draw, say }: Saving): void {
  onPress(page, "save-recipe", () => {
    const { draft, result } = store.state();
    const slug = result.ok ? result.recipe.slug : draft.slug || "recipe";
    saveFile(slug, "md", draft.text);
    say(`Put ${slug}.md into content/patterns, and the next build has it.`);
  });
  onPress(page, "save-page-svg", () =>
    withPlan((name, { plan, notebook, ...result }) => {
      const recipe = titledRecipe(result);
      if (plan.fits) saveFile(name, "svg", draw.file(pageScene({ plan, recipe, notebook })));
      else say("There is no drawing to save: the pattern does not fit this notebook.");
    }),
  );
  onPress(page, "save-plan", () =>
    withPlan((name, { plan }) => saveFile(name, "json", planJson(plan))),
  );
  onPress(page, "copy-link", () => void copyLink(theOne(page, "#link", HTMLInputElement), say));

  type Good = Extract<ReturnType<RecipeStore["state"]>["result"], { ok: true }>;

  function withPlan(act: (name: string, result: Good) => void): void {
    const { result } = store.state();
    if (result.ok) act(recipeFileName(result), result);
    else say("The recipe has problems: see the list below it.");
  }
}
