/** The set-up page's store while calendar files are opened: events change what is drawn, and plan nothing again. */
import { expect, it } from "vitest";
import { openSetupStore } from "../../site/script/setup/setup-store.ts";
import type { DayRange } from "../../src/calendar/span.ts";
import { readSetupAddress } from "../../src/view/address/setup-address.ts";
import { USUAL_FIELDS } from "../../src/view/fields/notebook-fields.ts";
import { readFields } from "../../src/view/fields/read-notebook-fields.ts";
import { demoCatalogue } from "../setup/demo-catalogue.ts";

const { catalogue } = await demoCatalogue();

/** A store that plans at once, and how often it did. */
function storeFor(address: string) {
  const [said, fields] = [readSetupAddress(address), readFields(USUAL_FIELDS)];
  if (!said.ok || !said.value.setup || !fields.ok) throw new Error("this is no set-up");
  const planned: string[] = [];
  const queue = {
    put: (name: string, work: () => boolean) => {
      planned.push(name);
      while (work());
    },
  };
  const { setup, calendar = {} } = said.value;
  const asked = { notebook: fields.value, setup, calendar };
  return { planned, store: openSetupStore(catalogue, { asked, packed: [] }, queue) };
}

const MARCH = "#v=1&dates=2027-03&pages=month-grid";

it("draws what is opened on what is planned, and looks for it once for the same days", () => {
  const { planned, store } = storeFor(MARCH);
  const { setup, recipe } = store.state();
  expect(setup?.pages).toHaveLength(1);
  expect(store.state().events).toEqual([]);
  const asked: DayRange[] = [];
  store.setEvents((days) => {
    asked.push(days);
    return [{ ...days, title: "Water days" }];
  });
  const { events } = store.state();
  expect(events).toEqual([{ ...recipe.dates, title: "Water days" }]);
  expect(store.state().setup).toBe(setup);
  expect(planned).toEqual(["plan"]);

  store.edit((pages) => [...pages, ...pages]);
  expect(store.state().events).toBe(events);
  expect(asked).toEqual([recipe.dates]);
});

it("has those of other days where other days are set up, and none once the files are gone", () => {
  const { store } = storeFor(MARCH);
  store.setEvents((days) => [{ ...days, title: "Water days" }]);
  const april = readSetupAddress("#v=1&dates=2027-04&pages=month-grid");
  store.update(april.ok && april.value.setup ? { setup: april.value.setup } : {});
  const { dates } = store.state().recipe;
  expect(store.state().events).toEqual([{ ...dates, title: "Water days" }]);
  expect(dates.to - dates.from).toBe(29);
  store.setEvents(() => []);
  expect(store.state().events).toEqual([]);
});
