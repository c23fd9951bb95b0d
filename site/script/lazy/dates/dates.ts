/** The part that plans patterns for picked days and for other notebooks: the build's own engine, loaded when somebody asks for that. */
import { moonAt } from "../../../../src/calendar/names/moon-names.ts";
import { blankScene } from "../../../../src/draw/page/blank-scene.ts";
import { gridScene } from "../../../../src/draw/page/grid-scene.ts";
import { pageScene } from "../../../../src/draw/page/page-scene.ts";
import { thumbnailScene } from "../../../../src/draw/page/thumbnail-scene.ts";
import { pixelsOf } from "../../../../src/draw/scene.ts";
import { stripScene } from "../../../../src/draw/strip/strip-scene.ts";
import { createSvgWriter } from "../../../../src/draw/svg/write-svg.ts";
import { sayAddressIssue } from "../../../../src/issue/words/say-address-issue.ts";
import { sayLeftOut } from "../../../../src/issue/words/say-strip-note.ts";
import type { Notebook } from "../../../../src/notebook/notebook.ts";
import type { Plan } from "../../../../src/plan/plan.ts";
import { planJson } from "../../../../src/plan/plan-json.ts";
import { layOutPattern, planPattern } from "../../../../src/plan/plan-pattern.ts";
import type { When } from "../../../../src/plan/when.ts";
import { sheetClass } from "../../../../src/print/sheets/css-page.ts";
import { attemptOf, labelsOf, onSide } from "../../../../src/recipe/area-tree.ts";
import type { Recipe } from "../../../../src/recipe/recipe.ts";
import { sideOfPage } from "../../../../src/setup/plan-setup.ts";
import { buildSingleStrip } from "../../../../src/strip/single-strip.ts";
import type { Strip } from "../../../../src/strip/strip.ts";
import { readAddress, writeAddress } from "../../../../src/view/address/hash-params.ts";
import { notebookEntries } from "../../../../src/view/address/notebook-address.ts";
import {
  DATES_ADDRESS_KEYS,
  datesEntries,
  readDatesEntries,
} from "../../../../src/view/address/span-address.ts";
import { alongView } from "../../../../src/view/draw-along/draw-along-view.ts";
import { eventLines } from "../../../../src/view/events/event-lines.ts";
import { unnamed } from "../../../../src/view/fields/name-notebook.ts";
import { type DatesChoice, NO_DATES, whenPicked } from "../../../../src/view/fields/span-fields.ts";
import { planFacts } from "../../../../src/view/pattern/plan-status.ts";
import { fitSummary, misfitReason } from "../../../../src/view/pattern/plan-summary.ts";
import { spanFileName, spanTitle } from "../../../../src/view/pattern/span-words.ts";
import { yearFit, yearOf } from "../../../../src/view/pattern/year-fit.ts";
import { keptPrinter } from "../../device/kept-printer.ts";
import { summaryElements } from "../../ui/plan-summary.ts";
import { pictureAddress } from "../../ui/show-drawing.ts";
import { bindSpanPicker } from "../../ui/span-picker.ts";
import { openCards } from "./cards.ts";
import type {
  CardView,
  DatesPart,
  LiveQuestion,
  LiveView,
  StripFacts,
  YearQuestion,
  YearView,
} from "./dates-part.ts";
import { readNotebook } from "./read-notebook.ts";

const write = createSvgWriter(window);
const NO_ENTRIES = writeAddress([]);

function readDates(text: string): DatesChoice | string {
  if (text === "") return NO_DATES;
  const values = readAddress(`${NO_ENTRIES}&${text}`, DATES_ADDRESS_KEYS);
  const reading = values.ok ? readDatesEntries(values.value) : values;
  return reading.ok ? (reading.value ?? NO_DATES) : sayAddressIssue(reading.issue);
}

function writeDates(choice: DatesChoice): string {
  return writeAddress(datesEntries(choice)).slice(NO_ENTRIES.length + 1);
}

function liveView(asked: LiveQuestion): LiveView {
  const { notebook, choice, book, names, utcOffset } = asked;
  const written = onItsSide(asked);
  const moonOn = utcOffset === undefined ? undefined : moonAt(utcOffset);
  const when = whenPicked(written.dates?.span, choice, { book, names, moonOn });
  const plan = planPattern(written, notebook, when);
  const { span, rule } = when;
  const title = span ? `${written.title}, ${spanTitle(span, rule)}` : written.title;
  const recipe = { ...plan.recipe, title };
  const dated = span ? (asked.eventsIn?.(span) ?? []) : [];
  const scene = plan.fits
    ? pageScene({ plan, recipe, notebook, events: dated })
    : gridScene(notebook);
  return {
    when,
    plan,
    recipe,
    notebook,
    dated,
    events: eventLines(dated, rule),
    notebookAddress: writeAddress(notebookEntries(unnamed(notebook))),
    pages: plan.fits ? plan.pages.length : 0,
    fileName: `${recipe.slug}-${notebook.slug}${span ? `-${spanFileName(span)}` : ""}`,
    planJson: planJson(plan),
    outcome: plan.fits ? fitSummary(plan, plan.recipe).leftoverWords : misfitReason(plan, recipe),
    sheet: plan.fits
      ? sheetClass(thumbnailScene({ plan, recipe, notebook }).frame, scene.frame)
      : "prints-words",
    along: plan.fits ? alongView(plan, notebook) : undefined,
    svg: write(scene, "inline"),
    summary: () => summaryElements(plan, recipe),
    pageFile: () => write(scene),
    stripFile: () => write(stripScene(buildSingleStrip(recipe, notebook, plan))),
    strip: () => stripFacts(buildSingleStrip(recipe, notebook, plan), plan),
  };
}

function onItsSide({ recipe, notebook, setup }: LiveQuestion): Recipe {
  const number = Number(setup?.replace("setup=", ""));
  return setup === undefined ? recipe : onSide(recipe, sideOfPage(number, notebook.binding));
}

function stripFacts(strip: Strip, plan: Plan): StripFacts {
  const labelAt = labelsOf(attemptOf(plan.recipe, plan.fits ? plan.used : 0));
  const scene = stripScene(strip);
  return {
    src: pictureAddress(write(scene)),
    ...pixelsOf(scene.frame),
    leftOut: strip.sides.flatMap((side) => side.leftOut.map((fact) => sayLeftOut(fact, labelAt))),
  };
}

function cardView(written: Recipe, notebook: Notebook, book: When): CardView {
  const plan = layOutPattern(written, notebook, book);
  const { recipe } = plan;
  return {
    ...planFacts(plan, notebook),
    picture: () => {
      const scene = plan.fits ? thumbnailScene({ plan, recipe, notebook }) : blankScene(notebook);
      return { src: pictureAddress(write(scene)), ...scene.frame };
    },
  };
}

function yearView(asked: YearQuestion): YearView | undefined {
  const { recipe, notebook, choice, when, year } = asked;
  const found = yearFit(recipe, notebook, { year, when });
  if (!found) return undefined;
  const pictures = found.plans.map((plan) =>
    pictureAddress(
      write(plan.fits ? thumbnailScene({ plan, recipe, notebook }) : blankScene(notebook)),
    ),
  );
  const cells = found.cells.map(({ span, name, title, mark, plan }) => ({
    ...{ span, name, title, mark },
    said: writeDates({ picked: span, calendar: choice.calendar }),
    picture: pictures[plan] ?? "",
  }));
  return { year: found.year, words: found.words, cells };
}

const part: DatesPart = {
  bindSpanPicker,
  readDates,
  writeDates,
  readNotebook,
  liveView,
  cardView,
  openCards: (question) => openCards(window, question, cardView),
  yearView,
  yearOf,
  keptPrinter,
};

Object.assign(window, { spanbookDates: part });
