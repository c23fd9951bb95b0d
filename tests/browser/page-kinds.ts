/** One page of each kind, as the demo book has them: what is tested on a kind of page is tested on these. */

export const PAGE_KINDS: Readonly<Record<string, string>> = {
  "the front page": "index.html",
  "the list of patterns": "patterns/index.html",
  "a pattern": "patterns/two-row-week/a5/index.html",
  "a pattern on two pages": "patterns/ninths-spread/a5/index.html",
  "a pattern that does not fit": "patterns/shed-wall/a6/index.html",
  "the list of notebooks": "notebooks/index.html",
  "a notebook": "notebooks/a5/index.html",
  "the list of strips": "strips/index.html",
  "a strip": "strips/everyday/a5/index.html",
  "the list of set-ups": "setups/index.html",
  "a set-up": "setups/march-on-the-lane/a5/index.html",
  "the guide": "guide/index.html",
  "a chapter with figures": "guide/counting/index.html",
  "a chapter with examples": "guide/recipe/index.html",
  "a chapter with a strip": "guide/strip/index.html",
  "the reference": "guide/reference/index.html",
  "the fit page": "fit/index.html",
  "the recipe page": "fit/recipe/index.html",
  "the measure page": "measure/index.html",
  "the page for what is not there": "404.html",
};
