/** One page for each set-up on each notebook. The template itself is in the layouts, where it is compiled once. */
export default {
  pagination: { data: "setupPairs", size: 1, alias: "pair" },
  layout: "setup-page.njk",
  permalink: ({ pair }) => `setups/${pair.setup}/${pair.notebook}/index.html`,
};
