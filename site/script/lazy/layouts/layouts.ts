/** The part that plans and draws layouts of one's own for the gallery: loaded where somebody keeps any. */
import { blankScene } from "../../../../src/draw/page/blank-scene.ts";
import { thumbnailScene } from "../../../../src/draw/page/thumbnail-scene.ts";
import { createSvgWriter } from "../../../../src/draw/svg/write-svg.ts";
import type { Notebook } from "../../../../src/notebook/notebook.ts";
import { planPattern } from "../../../../src/plan/plan-pattern.ts";
import { readFitAddress } from "../../../../src/view/address/fit-address.ts";
import { openCatalogue } from "../../../../src/view/catalogue.ts";
import { nameNotebook, unnamed } from "../../../../src/view/fields/name-notebook.ts";
import { MINE } from "../../../../src/view/gallery/gallery-query.ts";
import { planFacts } from "../../../../src/view/pattern/plan-status.ts";
import { keptText } from "../../device/kept-entry.ts";
import { pictureAddress } from "../../ui/show-drawing.ts";
import type { CardAround, LayoutsPart } from "./layouts-part.ts";

const write = createSvgWriter(window);

const part: LayoutsPart = {
  ownCard: (written, around) => {
    const notebook = notebookOf(around);
    if (!notebook) return undefined;
    const plan = planPattern(written, notebook, openCatalogue(around.book).when);
    const { recipe } = plan;
    const scene = plan.fits ? thumbnailScene({ plan, recipe, notebook }) : blankScene(notebook);
    return {
      recipe: written,
      ...planFacts(plan, notebook),
      picture: pictureAddress(write(scene)),
    };
  },
};

function notebookOf({ device, book, notebook }: CardAround): Notebook | undefined {
  const { notebooks, slugs } = openCatalogue(book);
  const kept = readFitAddress(keptText(device, "notebook") ?? "", slugs);
  const mine = notebook === MINE && kept.ok ? kept.value.notebook : undefined;
  const of = notebooks.find(({ slug }) => slug === notebook) ?? notebooks[0];
  const asked = mine ?? (of && unnamed(of));
  return asked && nameNotebook(asked, notebooks);
}

Object.assign(window, { spanbookLayouts: part });
