/** One page for each strip on each notebook. The template itself is in the layouts, where it is compiled once. */
export default {
  pagination: { data: "stripPairs", size: 1, alias: "pair" },
  layout: "strip-page.njk",
  permalink: ({ pair }) => `strips/${pair.strip}/${pair.notebook}/index.html`,
};
