/** The way from one page of a set-up to the next, on the pages that show how each is drawn. */
import type { Device } from "../device/device.ts";
import { keptRoute } from "../device/setup-route.ts";
import { makeElement } from "../ui/make-element.ts";
import { partOf } from "../ui/parts.ts";

/** Shows the way for the page that the address says, as `setup=44`; `turned` is told when another page is begun. */
export function openSetupWay(
  panel: HTMLElement,
  device: Device,
  turned: () => void,
): (setup: string | undefined) => void {
  const place = partOf(panel, "setup-way");
  let last: string | undefined;
  return (setup) => {
    if (setup === last) return;
    if (last !== undefined && setup !== undefined) turned();
    last = setup;
    const route = setup === undefined ? undefined : keptRoute(device);
    const number = Number(setup?.replace("setup=", ""));
    const here = route?.pages.find((page) => page.number === number);
    place.hidden = !here;
    if (!route || !here) return;
    const next = route.pages.find((page) => page.number > number);
    place.replaceChildren(
      `Page ${number} of the set-up. `,
      ...(next
        ? [
            makeElement(
              "a",
              { href: next.href },
              `Next page of the set-up: ${next.number}, ${next.title}`,
            ),
          ]
        : ["It is the last one."]),
      " · ",
      makeElement("a", { href: route.home }, "All its pages"),
    );
  };
}
