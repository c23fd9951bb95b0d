/** Whoever follows a page of the set-up to how it is drawn can go on from there to the next one. */
import type { Device } from "../device/device.ts";
import { keepRoute, onRoute, type RoutePage } from "../device/setup-route.ts";

/** The route is kept when it is begun, and each of its links says which page it is for. */
export function bindRoute(spreads: HTMLElement, device: Device, home: () => string): void {
  const begin = ({ target }: Event) => {
    const link = target instanceof Element ? target.closest("a") : null;
    const number = Number(link?.closest(".facing")?.querySelector(".numbers")?.textContent);
    if (!link || !Number.isInteger(number)) return;
    keepRoute(device, { home: home(), pages: pagesIn(spreads) });
    link.href = onRoute(link.href, number);
  };
  spreads.addEventListener("click", begin);
  spreads.addEventListener("auxclick", begin);
}

/** The second half of a spread is drawn with the first. */
function pagesIn(spreads: HTMLElement): readonly RoutePage[] {
  return [...spreads.querySelectorAll(".facing")].flatMap((facing) => {
    const link = facing.querySelector("a");
    const number = Number(facing.querySelector(".numbers")?.textContent);
    const picture =
      facing.querySelector("use")?.getAttribute("href") ?? facing.querySelector("svg")?.id;
    if (!link || picture?.endsWith("-1")) return [];
    const days = facing.querySelector("small")?.textContent;
    const title = [link.textContent, ...(days ? [days] : [])].join(", ");
    return [{ number, title, href: onRoute(link.href, number) }];
  });
}
