/** The pages of a set-up in their order, as somebody draws one after another: each with the page of the book that shows how. */
import type { Device } from "./device.ts";

export interface SetupRoute {
  /** The address of the set-up itself. */
  readonly home: string;
  readonly pages: readonly RoutePage[];
}

export interface RoutePage {
  readonly number: number;
  readonly title: string;
  readonly href: string;
}

/** Keeps the route that is gone on with. */
export function keepRoute(device: Device, route: SetupRoute): void {
  device.set("route", JSON.stringify(route));
}

/** The route that is gone on with; nothing where none is kept, or what is kept is spoilt. */
export function keptRoute(device: Device): SetupRoute | undefined {
  try {
    const kept: unknown = JSON.parse(device.get("route") ?? "null");
    return isRoute(kept) ? kept : undefined;
  } catch {
    return undefined;
  }
}

/** The address of a page of the book, with the number of the page that it is drawn on. */
export function onRoute(href: string, number: number): string {
  const [page = "", hash = ""] = href.split("#");
  const said = (hash || "v=1").replace(/&setup=\d+/, "");
  return `${page}#${said}&setup=${number}`;
}

function isRoute(kept: unknown): kept is SetupRoute {
  return (
    isRecord(kept) &&
    isAddress(kept.home) &&
    Array.isArray(kept.pages) &&
    kept.pages.every(
      (page) =>
        isRecord(page) &&
        typeof page.number === "number" &&
        typeof page.title === "string" &&
        isAddress(page.href),
    )
  );
}

/** Only a page may be linked to, no script. */
function isAddress(kept: unknown): boolean {
  return typeof kept === "string" && /^(https?|file):/.test(kept);
}

function isRecord(kept: unknown): kept is Readonly<Record<string, unknown>> {
  return typeof kept === "object" && kept !== null;
}
