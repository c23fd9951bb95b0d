/** The store that every page has. */
import { expect, it } from "vitest";
import { openStore } from "../../site/script/app/store.ts";

it("tells the state at once, and every change with the state before it", () => {
  const store = openStore("a");
  const told: (readonly [string, string])[] = [];
  store.subscribe((state, before) => told.push([state, before]));
  store.set("b");
  store.set("c");
  expect(store.state()).toBe("c");
  expect(told).toEqual([
    ["a", "a"],
    ["b", "a"],
    ["c", "b"],
  ]);
});

it("tells everybody, in the order in which they came, before a change is over", () => {
  const store = openStore(0);
  const told: string[] = [];
  for (const name of ["first", "second"]) store.subscribe((state) => told.push(`${name} ${state}`));
  store.set(1);
  expect(told).toEqual(["first 0", "second 0", "first 1", "second 1"]);
});

it("tells nobody an older state last where one of them changes it again", () => {
  const store = openStore(0);
  const told: number[] = [];
  store.subscribe((state) => {
    if (state === 1) store.set(2);
  });
  store.subscribe((state) => told.push(state));
  store.set(1);
  expect(told.at(-1)).toBe(2);
  expect(told).not.toContain(1);
});
