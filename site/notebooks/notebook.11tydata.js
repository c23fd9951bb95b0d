/** One page for each notebook. The template itself is in the layouts, where it is compiled once. */
export default {
  pagination: { data: "notebookSlugs", size: 1, alias: "slug" },
  layout: "notebook-page.njk",
  permalink: ({ slug }) => `notebooks/${slug}/index.html`,
};
