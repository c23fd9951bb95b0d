/** The part that plans and draws layouts of one's own for the gallery: loaded where somebody keeps any. */
import { blankScene } from "../../../../src/draw/page/blank-scene.ts";
import { thumbnailScene } from "../../../../src/draw/page/thumbnail-scene.ts";
import { createSvgWriter } from "../../../../src/draw/svg/write-svg.ts";
import { planPattern } from "../../../../src/plan/plan-pattern.ts";
import { readFitAddress } from "../../../../src/view/address/fit-address.ts";
import { openCatalogue } from "../../../../src/view/catalogue.ts";
import { nameNotebook, unnamed } from "../../../../src/view/fields/name-notebook.ts";
import { statusWords } from "../../../../src/view/pattern/plan-status.ts";
import { keptText } from "../../device/kept-entry.ts";
import { pictureAddress } from "../../ui/show-drawing.ts";
import type { LayoutsPart } from "./layouts-part.ts";

const write = createSvgWriter(window);

const part: LayoutsPart = {
  ownCards: (recipes, { device, book }) => {
    const catalogue = openCatalogue(book);
    const { notebooks, slugs, when } = catalogue;
    const kept = readFitAddress(keptText(device, "notebook") ?? "", slugs);
    const chosen = notebooks.find(({ slug }) => slug === device.get("book-notebook"));
    const [first] = notebooks;
    const of = chosen ?? first;
    const asked = (kept.ok ? kept.value.notebook : undefined) ?? (of && unnamed(of));
    if (!asked) return [];
    const notebook = nameNotebook(asked, notebooks);
    return recipes.map((written) => {
      const plan = planPattern(written, notebook, when);
      const { recipe } = plan;
      const scene = plan.fits ? thumbnailScene({ plan, recipe, notebook }) : blankScene(notebook);
      return {
        slug: written.slug,
        title: written.title,
        state: statusWords(plan).state,
        picture: pictureAddress(write(scene)),
      };
    });
  },
};

Object.assign(window, { spanbookLayouts: part });
