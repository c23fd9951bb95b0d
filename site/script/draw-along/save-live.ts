/** The downloads of a pattern's page while it shows picked days or another notebook: made in the page, and named after them. */
import type { Device } from "../device/device.ts";
import { datesPart, type LiveView } from "../lazy/dates/dates-part.ts";
import { printPart } from "../lazy/print/print-part.ts";
import { saveFile } from "../ui/save-file.ts";

interface Saving {
  readonly device: Device;
  readonly load: (name: string) => Promise<void>;
  readonly view: () => LiveView | undefined;
}

/** Takes over from the links to the built files. */
export function bindLiveDownloads(page: Document, { device, load, view }: Saving): void {
  page.addEventListener("click", (event) => {
    const { target } = event;
    const link = target instanceof Element ? target.closest("a[download]") : null;
    const file = BUILT_FILES.find((name) => name === link?.getAttribute("href"));
    const now = view();
    if (!file || !now) return;
    event.preventDefault();
    if (file === "page.svg") saveFile(now.fileName, "svg", now.pageFile());
    if (file === "strip.svg") saveFile(`${now.fileName}-strip`, "svg", now.stripFile());
    if (file === "plan.json") saveFile(now.fileName, "json", now.planJson);
    if (file === "page.pdf") void savePdf(now, load, device);
  });
}

const BUILT_FILES = ["page.pdf", "page.svg", "strip.svg", "plan.json"] as const;

async function savePdf(
  { plan, recipe, notebook, dated, fileName }: LiveView,
  load: Saving["load"],
  device: Device,
): Promise<void> {
  if (!plan.fits) return;
  const [part, { keptPrinter }] = await Promise.all([
    printPart(window, load),
    datesPart(window, load),
  ]);
  const pdf = await part.pagePdf({ plan, recipe, notebook, events: dated }, keptPrinter(device));
  saveFile(fileName, "pdf", new Uint8Array(pdf));
}
