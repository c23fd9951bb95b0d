/** A set-up as somebody writes it: read, checked, paged on a notebook step by step, written again; or every problem told at its place. */
import fc from "fast-check";
import { saySetupLeftOut } from "../../src/issue/words/say-setup-left-out.ts";
import type { Notebook } from "../../src/notebook/notebook.ts";
import { unknownIn } from "../../src/recipe/chosen.ts";
import { readSetup } from "../../src/recipe/read/read-setup.ts";
import { SETUP_LIMITS } from "../../src/recipe/setup-keys.ts";
import type { SetupRecipe } from "../../src/recipe/setup-recipe.ts";
import { writeSetupRecipe } from "../../src/recipe/write-setup-recipe.ts";
import { setupIssues } from "../../src/setup/check-setup.ts";
import { type SetupQuestion, setupSteps, sideOfPage } from "../../src/setup/plan-setup.ts";
import type { Setup } from "../../src/setup/setup.ts";
import { setupContents, setupUses } from "../../src/setup/setup-contents.ts";
import { setupJson } from "../../src/setup/setup-json.ts";
import { setupStrip } from "../../src/setup/setup-strip.ts";
import { readSetupAddress, writeSetupAddress } from "../../src/view/address/setup-address.ts";
import { unnamed } from "../../src/view/fields/name-notebook.ts";
import { anySetup } from "../random/any-setup.ts";
import { wildFile } from "../random/wild-file.ts";
import { promise, promiseSaid, promiseSame, promiseTold, type Seen } from "./promises.ts";
import type { Sources } from "./sources.ts";
import { promiseStrip } from "./try-strip.ts";

/** So many pages are looked at; a set-up of hundreds is the same over and over. */
const MOST_PAGES = 60;

export function setupKind({ catalogue, texts, slugs, notebooks }: Sources) {
  const text = wildFile({
    owner: "setup",
    texts: fc.oneof(texts.setups, anySetup(fc.constantFrom(...slugs)).map(writeSetupRecipe)),
    slugs,
  });
  const path = "setups/one.md";
  const known = new Map(catalogue.recipes.map((recipe) => [recipe.slug, recipe]));

  function attempt({ text, notebook }: Case, seen: Seen): void {
    const { when } = catalogue;
    const reading = seen.run(() => readSetup({ path, text }));
    const sources = { recipe: (slug: string) => known.get(slug), rule: when.rule };
    const issues = [
      ...(reading.ok ? seen.run(() => setupIssues(reading.value, sources)) : reading.issues),
      ...unknownIn(reading.named, "pattern", [...known.keys()]),
    ];
    if (!reading.ok || issues.length > 0) {
      seen.depth("refused");
      promiseTold(issues, { path, text }, seen);
      return;
    }
    const question = { setup: reading.value, notebook, when, recipe: catalogue.recipe };
    const setup = stepped(question, seen);
    seen.depth(setup ? "paged" : "many pages");
    if (setup) promiseSetup(setup, notebook, seen);
    promiseWritten(reading.value, notebook);
  }

  return {
    name: "set-ups",
    cases: fc.record({ text, notebook: notebooks }),
    attempt,
  };
}

interface Case {
  readonly text: string;
  readonly notebook: Notebook;
}

/** Page by page, as the page does it; nothing where there are more than are looked at. */
function stepped(question: SetupQuestion, seen: Seen): Setup | undefined {
  const steps = setupSteps(question);
  for (let count = 0; count <= MOST_PAGES; count++) {
    const { done, value } = seen.step(() => steps.next());
    if (done) return value;
  }
  return undefined;
}

function promiseSetup(setup: Setup, notebook: Notebook, seen: Seen): void {
  const { pages, plans, leftOut, recipe } = setup;
  promise(pages.length <= SETUP_LIMITS.pages, "more pages than there may be", pages.length);
  for (const [index, { number, side, drawn }] of pages.entries()) {
    promise(number === recipe.first + index, "pages that do not follow one another", number);
    promise(side === sideOfPage(number, notebook.binding), "a page on the other side", number);
    const plan = drawn && plans[drawn.plan];
    promise(!drawn || plan?.pages[drawn.page] !== undefined, "a page without a plan", drawn);
    if (plan?.pages.length !== 2) continue;
    promise(drawn?.page === (side === "left" ? 0 : 1), "a half on the other side", number);
    const other = pages[number % 2 === 0 ? index + 1 : index - 1]?.drawn;
    promise(other?.plan === drawn.plan, "a spread that is no even page and the next", number);
  }
  for (const { why } of leftOut) {
    seen.code(`set-up/${why.kind}`);
    promiseSaid(saySetupLeftOut(why));
  }
  JSON.parse(setupJson(setup));
  const lines = setupContents(setup);
  promise(
    lines.every(({ from, to }) => from <= to),
    "contents that run backwards",
    lines,
  );
  const uses = [...setupUses(setup).values()].reduce((sum, times) => sum + times, 0);
  const drawn = pages.filter((page) => page.drawn?.page === 0).length;
  promise(uses === drawn, "uses that are not the pages", { uses, drawn });
  promiseStrip(setupStrip(setup, notebook), seen);
}

/** As a file and as an address it is the same again. */
function promiseWritten(recipe: SetupRecipe, notebook: Notebook): void {
  const text = writeSetupRecipe(recipe);
  const again = readSetup({ path: "setups/one.md", text });
  promise(again.ok && writeSetupRecipe(again.value) === text, "a file of another set-up", text);
  // A field has no blanks around its text.
  const title = recipe.title.trim();
  const hash = writeSetupAddress({
    notebook: unnamed(notebook),
    setup: { ...recipe, title, body: "" },
  });
  const said = readSetupAddress(hash);
  const isLong = !said.ok && said.issue.kind === "too-long";
  promise(isLong || said.ok, "an address that is not read", { hash, said });
  if (said.ok) promiseSame(writeSetupAddress(said.value), hash, "another address");
}
