/** Events in the boxes of their days: inside the box, clear of its label, as many as have room, and nothing else changes. */
import { expect, it } from "vitest";
import { ENGLISH } from "../../src/calendar/english.ts";
import { readSpan } from "../../src/calendar/read-span.ts";
import { ISO_WEEKS } from "../../src/calendar/week.ts";
import { pageScene } from "../../src/draw/page/page-scene.ts";
import { thumbnailScene } from "../../src/draw/page/thumbnail-scene.ts";
import type { TextMark } from "../../src/draw/scene.ts";
import { textWidth } from "../../src/draw/text-width.ts";
import type { DatedEvent } from "../../src/events/events-in.ts";
import { eventsIn } from "../../src/events/events-in.ts";
import { readNotebook } from "../../src/notebook/read-notebook.ts";
import { layOutPattern } from "../../src/plan/plan-pattern.ts";
import { readRecipe } from "../../src/recipe/read/read-recipe.ts";
import { calendarOf, event } from "../events/written.ts";
import { demoNames, demoText } from "../setup/demo-files.ts";
import { checkSample } from "../sweep/sweep-size.ts";

const SPANS = {
  day: "2027-03-11",
  week: "2027-W10",
  month: "2027-03",
  quarter: "2027-01/2027-03",
  year: "2027",
} as const;

const RECIPES = new Map(
  demoNames("patterns").map((name) => {
    const path = `patterns/${name}` as const;
    return [name, readRecipe({ path, text: demoText(path) })];
  }),
);

function dated(name: string, notebookName: string) {
  const recipe = RECIPES.get(name);
  const notebook = readNotebook({
    path: `notebooks/${notebookName}`,
    text: demoText(`notebooks/${notebookName}`),
  });
  if (!recipe?.ok || !notebook.ok) throw new Error(name);
  const kind = recipe.value.dates?.span;
  const span = kind && readSpan(SPANS[kind]);
  if (!kind || !span?.ok) return undefined;
  const when = { rule: ISO_WEEKS, names: ENGLISH, span: { kind, ...span.value } };
  const plan = layOutPattern(recipe.value, notebook.value, when);
  return plan.fits ? { plan, recipe: plan.recipe, notebook: notebook.value } : undefined;
}

const EVENTS = [
  "DTSTART;VALUE=DATE:20270311|SUMMARY:Frost",
  "DTSTART:20270311T080000|SUMMARY:Skip comes",
  "DTSTART:20270311T100000|SUMMARY:Hedge\\, the long side\\, with everyone who has shears",
  "DTSTART:20270311T140000|SUMMARY:<img src=x onerror=alert(1)>",
  "DTSTART:20270311T190000",
  "DTSTART;VALUE=DATE:20270302|RRULE:FREQ=WEEKLY|SUMMARY:Water day",
  "DTSTART;VALUE=DATE:20270319|DTEND;VALUE=DATE:20270322|SUMMARY:ימים פתוחים",
].flatMap((lines) => event(...lines.split("|")));

function inside({ x, y, size, text }: TextMark) {
  return { left: x, right: x + textWidth(text, size), top: y - 0.69 * size, bottom: y };
}

const PAIRS = ["a5.md", "a6.md", "b5-right.md", "pad.md"].flatMap((notebook) =>
  demoNames("patterns").map((name) => [name, notebook] as const),
);
const DRAWN = checkSample(PAIRS).flatMap(([name, notebook]) => {
  const drawing = dated(name, notebook);
  return drawing ? [{ name: `${name} on ${notebook}`, drawing }] : [];
});

it.each(DRAWN)(
  "$name: events stand clear of everything, and change nothing else",
  ({ drawing }) => {
    const { dates } = drawing.plan;
    if (!dates) throw new Error("it has dates");
    const { events } = eventsIn([calendarOf(EVENTS)], dates);
    expect(events.length).toBeGreaterThan(0);
    const scene = pageScene({ ...drawing, events });
    const isEvent = ({ role }: { readonly role: string }) => role === "event";
    const texts = scene.marks.filter((mark) => mark.kind === "text");
    const written = texts.filter(isEvent);
    for (const mark of written) {
      const own = inside(mark);
      const paper = drawing.plan.pages.length * 400;
      expect(own.left).toBeGreaterThanOrEqual(0);
      expect(own.right).toBeLessThan(paper);
      const touched = texts.filter((other) => {
        if (other === mark || other.turn !== undefined || other.anchor !== "start") return false;
        const its = inside(other);
        return (
          own.left < its.right &&
          its.left < own.right &&
          own.top < its.bottom &&
          its.top < own.bottom
        );
      });
      expect(touched.map(({ text }) => `${mark.text} on ${text}`)).toEqual([]);
    }
    const without = (marks: typeof scene.marks) =>
      marks.filter((mark) => !isEvent(mark) && mark.role !== "grid" && mark.role !== "grid-line");
    expect(without(scene.marks)).toEqual(without(pageScene(drawing).marks));
    expect(pageScene({ ...drawing, events: [] })).toEqual(pageScene(drawing));
  },
);

it("a month's grid has them below its numbers", () => {
  const drawing = dated("month-grid.md", "a5.md");
  if (!drawing?.plan.dates) throw new Error("it fits");
  const { events } = eventsIn([calendarOf(EVENTS)], drawing.plan.dates);
  const written = pageScene({ ...drawing, events }).marks.filter(({ role }) => role === "event");
  expect(written.map((mark) => (mark.kind === "text" ? mark.text : ""))).toEqual([
    "Water day",
    "Water day",
    "Frost",
    "08:00 Skip comes",
    "10:00 Hedge, the…",
    "14:00 <img src=x…",
    "19:00 Untitled",
    "Water day",
    "ימים פתוח…",
    "ימים פתוחים",
    "ימים פתוח…",
    "Water day",
    "Water day",
  ]);
});

it("a line for each day says how many more there are", () => {
  const drawing = dated("month-date-a-line.md", "a5.md");
  if (!drawing?.plan.dates) throw new Error("it fits");
  const { events } = eventsIn([calendarOf(EVENTS)], drawing.plan.dates);
  const written = pageScene({ ...drawing, events }).marks.filter(({ role }) => role === "event");
  expect(written.map((mark) => (mark.kind === "text" ? mark.text : ""))).toContain("Frost +4");
});

it("a tracker's boxes are for ticks", () => {
  const drawing = dated("habit-tracker.md", "a5.md");
  if (!drawing?.plan.dates) throw new Error("it fits");
  const { events } = eventsIn([calendarOf(EVENTS)], drawing.plan.dates);
  expect(pageScene({ ...drawing, events })).toEqual(pageScene(drawing));
  expect(thumbnailScene({ ...drawing, events })).toEqual(thumbnailScene(drawing));
});

it("a small drawing has a bar for each, and is as before without any", () => {
  const drawing = dated("month-grid.md", "a5.md");
  if (!drawing?.plan.dates) throw new Error("it fits");
  const { events } = eventsIn([calendarOf(EVENTS)], drawing.plan.dates);
  const { marks } = thumbnailScene({ ...drawing, events });
  const [bars, ...others] = marks.filter(({ role }) => role === "event");
  expect(others).toEqual([]);
  expect(bars?.kind === "path" ? bars.d.match(/M/g) : []).toHaveLength(13);
  expect(marks.filter(({ role }) => role !== "event")).toEqual(thumbnailScene(drawing).marks);
  expect(thumbnailScene({ ...drawing, events: [] })).toEqual(thumbnailScene(drawing));
});

it("a full box says on its last line how many more there are", () => {
  const many = (count: number): readonly DatedEvent[] => {
    const drawing = dated("month-grid.md", "a5.md");
    const from = drawing?.plan.dates?.from;
    if (!from) throw new Error("it fits");
    return Array.from({ length: count }, (_, index) => ({ title: `${index}`, from, to: from }));
  };
  const written = (count: number) => {
    const drawing = dated("month-grid.md", "a5.md");
    if (!drawing) throw new Error("it fits");
    const { marks } = pageScene({ ...drawing, events: many(count) });
    return marks.flatMap((mark) =>
      mark.kind === "text" && mark.role === "event" ? [mark.text] : [],
    );
  };
  const room = written(400).length;
  expect(room).toBeGreaterThan(5);
  expect(written(room)).toHaveLength(room);
  expect(written(room).at(-1)).toBe(`${room - 1}`);
  expect(written(room + 1).slice(-2)).toEqual([`${room - 2}`, "+2"]);
  expect(written(400).at(-1)).toBe(`+${400 - room + 1}`);
});
