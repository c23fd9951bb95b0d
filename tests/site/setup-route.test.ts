/** The pages of a set-up that somebody draws one after another, as they are kept. */
import { describe, expect, it } from "vitest";
import { openDevice } from "../../site/script/device/device.ts";
import { keepRoute, keptRoute, onRoute } from "../../site/script/device/setup-route.ts";
import { BOOK_SCRIPT, openWebSpace } from "../setup/web-space.ts";

const PAGE = "https://plots.example/patterns/two-row-week/a5/index.html";
const ROUTE = {
  home: "https://plots.example/setup/index.html#v=1&dates=2027-03",
  pages: [{ number: 44, title: "Week in two rows", href: `${PAGE}#v=1&setup=44` }],
};
const open = () => openDevice(openWebSpace().openTab(), BOOK_SCRIPT);

describe("a link of a route", () => {
  it.each([
    [PAGE, 44, `${PAGE}#v=1&setup=44`],
    [`${PAGE}#v=1&dates=2027-W09`, 44, `${PAGE}#v=1&dates=2027-W09&setup=44`],
    [`${PAGE}#v=1&setup=7&on=a5`, 44, `${PAGE}#v=1&on=a5&setup=44`],
  ])("%s for page %i is %s", (href, number, told) => {
    expect(onRoute(href, number)).toBe(told);
  });
});

describe("a route", () => {
  it("is there as it was kept, and none where none is", () => {
    const device = open();
    expect(keptRoute(device)).toBeUndefined();
    keepRoute(device, ROUTE);
    expect(keptRoute(device)).toEqual(ROUTE);
  });

  it.each([
    "{",
    "7",
    JSON.stringify({ ...ROUTE, home: "javascript:alert(1)" }),
    JSON.stringify({ ...ROUTE, pages: [{ ...ROUTE.pages[0], href: "data:text/html,x" }] }),
    JSON.stringify({ ...ROUTE, pages: [{ ...ROUTE.pages[0], number: "44" }] }),
  ])("that is spoilt is none: %s", (text) => {
    const device = open();
    device.set("route", text);
    expect(keptRoute(device)).toBeUndefined();
  });
});
