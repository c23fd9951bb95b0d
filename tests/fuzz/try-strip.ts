/** A strip as somebody writes it: read, worked out on a notebook, drawn, written again; or every problem told at its place. */
import fc from "fast-check";
import { stripScene } from "../../src/draw/strip/strip-scene.ts";
import { sayLeftOut } from "../../src/issue/words/say-strip-note.ts";
import type { Notebook } from "../../src/notebook/notebook.ts";
import { takenTitles, unknownIn } from "../../src/recipe/chosen.ts";
import { readStripRecipe } from "../../src/recipe/read/read-strip-recipe.ts";
import { patternsOf, type StripRecipe } from "../../src/recipe/strip-recipe.ts";
import { writeStripRecipe } from "../../src/recipe/write-strip-recipe.ts";
import { planCases } from "../../src/strip/plan-cases.ts";
import type { Strip, StripSide } from "../../src/strip/strip.ts";
import { stripJsonText } from "../../src/strip/strip-json.ts";
import { readStripAddress, writeStripAddress } from "../../src/view/address/strip-address.ts";
import { unnamed } from "../../src/view/fields/name-notebook.ts";
import { stripResult } from "../../src/view/strip/strip-result.ts";
import { anyStrip } from "../random/any-strip.ts";
import { wildFile } from "../random/wild-file.ts";
import { promiseMarks } from "./plan-promises.ts";
import { promise, promiseSaid, promiseSame, promiseTold, type Seen } from "./promises.ts";
import type { Sources } from "./sources.ts";

export function stripKind({ catalogue, texts, slugs, notebooks }: Sources) {
  const text = wildFile({
    owner: "strip",
    texts: fc.oneof(texts.strips, anyStrip(fc.constantFrom(...slugs)).map(writeStripRecipe)),
    slugs,
  });
  const path = "strips/one.md";

  function attempt({ text, notebook }: Case, seen: Seen): void {
    const reading = seen.run(() => readStripRecipe({ path, text }));
    const more = [
      ...unknownIn(reading.named, "pattern", [...catalogue.carried]),
      ...takenTitles(reading.divisions, [...catalogue.carried]),
    ];
    const issues = [...(reading.ok ? [] : reading.issues), ...more];
    if (!reading.ok || issues.length > 0) {
      seen.depth("refused");
      promiseTold(issues, { path, text }, seen);
      return;
    }
    const asked = { notebook: unnamed(notebook), strip: reading.value };
    const { when } = catalogue;
    for (const slug of patternsOf(reading.value))
      seen.run(() =>
        planCases(catalogue.recipe(slug), notebook, { when, days: reading.value.dates }),
      );
    const { strip } = stripResult(asked, catalogue);
    const carries = strip.sides.some(({ lanes }) => lanes.length > 0);
    seen.depth(carries ? "carries" : "bare");
    promiseStrip(strip, seen);
    const again =
      text.length % 4 === 0 ? stripResult(structuredClone(asked), catalogue) : { strip };
    promiseSame(stripJsonText(again.strip), stripJsonText(strip), "other bytes for the same");
    promiseMarks(seen.run(() => stripScene(strip)).marks);
    promiseWritten(reading.value, asked.notebook, catalogue.carried);
  }

  return {
    name: "strips",
    cases: fc.record({ text, notebook: notebooks }),
    attempt,
    // A month of hundreds of boxes comes out in 28 ways in ten years, and each is worked out.
    slack: 5,
  };
}

interface Case {
  readonly text: string;
  readonly notebook: Notebook;
}

export function promiseStrip(strip: Strip, seen: Seen): void {
  for (const side of strip.sides) {
    promise(side.lanes.length <= side.asked.limit, "more lanes than there may be");
    for (const { runs } of side.lanes) promiseLane(runs, side);
    for (const fact of side.leftOut) {
      seen.code(`left-out/${fact.kind}`);
      promiseSaid(sayLeftOut(fact));
    }
  }
}

/** Runs of a lane touch at most; their marks rise from the first to the last position. */
function promiseLane(runs: StripSide["lanes"][number]["runs"], { steps }: StripSide): void {
  const places = runs.toSorted((a, b) => a.from - b.from);
  for (const [index, { from, to, marks, uses }] of places.entries()) {
    const before = places[index - 1]?.to ?? 0;
    promise(from >= before && to <= steps, "runs that overlap", { from, to, before });
    const isRising = marks.every((mark, at) => at === 0 || mark > (marks[at - 1] ?? 0));
    const isIn = marks.every((mark) => Number.isInteger(mark) && mark >= from && mark <= to);
    promise(isRising && isIn && marks.length > 0 && uses >= 1, "marks out of order", marks);
  }
}

/** As a file and as an address it is the same again. */
function promiseWritten(recipe: StripRecipe, notebook: Notebook, known: ReadonlySet<string>): void {
  const text = writeStripRecipe(recipe);
  const again = readStripRecipe({ path: "strips/one.md", text });
  promise(again.ok && writeStripRecipe(again.value) === text, "a file of another strip", text);
  // A field has no blanks around its text.
  const title = recipe.title.trim();
  const hash = writeStripAddress({ notebook, strip: { ...recipe, title, body: "" } });
  const said = readStripAddress(hash, known);
  // What is too long for an address is told when the address is opened.
  const isLong = !said.ok && said.issue.kind === "too-long";
  promise(isLong || (said.ok && writeStripAddress(said.value) === hash), "another address", hash);
}
