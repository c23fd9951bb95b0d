/** What cases are made from, and what they are tried on: the demo's files, and notebooks of every kind. */
import fc from "fast-check";
import type { Notebook } from "../../src/notebook/notebook.ts";
import type { Catalogue } from "../../src/view/catalogue.ts";
import { anyNotebook, likelyNotebook } from "../random/any-notebook.ts";
import { demoCatalogue } from "../setup/demo-catalogue.ts";
import { demoNames, demoText } from "../setup/demo-files.ts";

type Kind = Parameters<typeof demoNames>[0];

export interface Sources {
  readonly catalogue: Catalogue;
  /** Of the patterns that may be named. */
  readonly slugs: readonly [string, ...string[]];
  readonly texts: Readonly<Record<Kind, fc.Arbitrary<string>>>;
  readonly notebooks: fc.Arbitrary<Notebook>;
}

export async function openSources(): Promise<Sources> {
  const { catalogue } = await demoCatalogue();
  const { recipes, notebooks } = catalogue;
  const [first = "", ...others] = recipes.map(({ slug }) => slug);
  const textsOf = (kind: Kind) => {
    const texts = demoNames(kind).map((name) => demoText(`${kind}/${name}`));
    return fc.constantFrom(...texts);
  };
  return {
    catalogue,
    slugs: [first, ...others],
    texts: {
      notebooks: textsOf("notebooks"),
      patterns: textsOf("patterns"),
      strips: textsOf("strips"),
      setups: textsOf("setups"),
    },
    notebooks: fc.oneof(
      { weight: 2, arbitrary: fc.constantFrom(...notebooks) },
      { weight: 2, arbitrary: likelyNotebook() },
      { weight: 1, arbitrary: anyNotebook() },
    ),
  };
}
