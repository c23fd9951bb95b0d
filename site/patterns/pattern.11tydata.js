/** One page for each pattern on each notebook. The template itself is in the layouts, where it is compiled once. */
export default {
  pagination: { data: "pairs", size: 1, alias: "pair" },
  layout: "pattern-page.njk",
  permalink: ({ pair }) => `patterns/${pair.pattern}/${pair.notebook}/index.html`,
};
