/** The pictures beside shared links, one for each pattern: drawn when a book tells its address, kept between builds. */
import { copyFile, mkdir, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { blankScene } from "../../draw/page/blank-scene.ts";
import { previewScene } from "../../draw/page/preview-scene.ts";
import { thumbnailScene } from "../../draw/page/thumbnail-scene.ts";
import type { Scene } from "../../draw/scene.ts";
import { sayCount } from "../../issue/words/say-count.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import { planPattern } from "../../plan/plan-pattern.ts";
import type { Recipe } from "../../recipe/recipe.ts";
import { wallRecipe } from "../../view/notebook/equal-parts-recipe.ts";
import { PURPOSE_WORDS } from "../../view/pattern/purpose-words.ts";
import { keyOf } from "../artifacts/cache/cache.ts";
import { diskCache } from "../artifacts/cache/disk-cache.ts";
import { patternSources } from "../artifacts/cache/sources.ts";
import { openSvgWriter } from "../artifacts/make/svg-writer.ts";
import { notebookPath } from "../content/content-paths.ts";
import type { Content } from "../content/load-content.ts";
import { openPngRenderer } from "./png-renderer.ts";

export interface PreviewOrder {
  readonly content: Content;
  /** The folder of finished pictures, and of the fonts they are written with. */
  readonly cache: string;
  /** The folder that the book grows in. */
  readonly output: string;
  /** Changes with the engine. */
  readonly version: string;
}

const DISK_BYTES = 64 << 20;

/** Where the picture of a pattern lies, from the book's root. */
export function previewPath(pattern: string): string {
  return `patterns/${pattern}/preview.png`;
}

/** Where the picture of the book itself lies. */
export const BOOK_PREVIEW_PATH = "preview.png";

/** Puts a picture of the book, and one of each pattern, on the book's first notebook into place. A book without an address has none. */
export async function makePreviews({
  content,
  cache,
  output,
  version,
}: PreviewOrder): Promise<void> {
  const { book, notebooks, recipes, texts } = content;
  const [notebook] = notebooks;
  if (book.url === undefined || !notebook) return;
  const sourceOf = (path: string) => texts.get(path) ?? "";
  const common = [version, book.title, notebook.slug, sourceOf(notebookPath(notebook.slug))];
  const pictures = openPictureCache(cache);
  await Promise.all([
    pictures.place(
      join(output, BOOK_PREVIEW_PATH),
      [...common, `${recipes.length} ${notebooks.length}`],
      () => bookScene(content, notebook),
    ),
    ...recipes.map((recipe) =>
      pictures.place(
        join(output, previewPath(recipe.slug)),
        [...common, ...patternSources([recipe.slug], content)],
        () => patternScene(recipe, notebook, content),
      ),
    ),
  ]);
  pictures.sweep();
}

/** Finished pictures, by what they were made from. */
function openPictureCache(cache: string) {
  const disk = diskCache(join(cache, "pictures"), "png");
  const paint = openPngRenderer(join(cache, "fonts"));
  const write = openSvgWriter();
  const used = new Set<string>();
  return {
    place: async (target: string, sources: readonly string[], draw: () => Scene) => {
      const key = keyOf(sources);
      used.add(key);
      await mkdir(dirname(target), { recursive: true });
      const known = disk.find(key);
      if (known !== undefined) return copyFile(known, target);
      const bytes = await paint(write(draw()));
      disk.write(key, bytes);
      return writeFile(target, bytes);
    },
    sweep: () => disk.sweep(DISK_BYTES, used),
  };
}

/** Where the pattern does not fit, the notebook's bare page stands for it. */
function patternScene(written: Recipe, notebook: Notebook, { book, when }: Content): Scene {
  const plan = planPattern(written, notebook, when);
  const { recipe } = plan;
  const page = plan.fits ? thumbnailScene({ plan, recipe, notebook }) : blankScene(notebook);
  const words = `${PURPOSE_WORDS[recipe.purpose].title}, on ${notebook.title}`;
  return previewScene({
    id: `preview-${recipe.slug}`,
    book: book.title,
    title: recipe.title,
    words,
    page,
  });
}

/** The page of equal parts stands for the book. */
function bookScene({ book, recipes, notebooks }: Content, notebook: Notebook): Scene {
  const recipe = wallRecipe(notebook);
  const plan = planPattern(recipe, notebook);
  const page = plan.fits ? thumbnailScene({ plan, recipe, notebook }) : blankScene(notebook);
  const words = `${sayCount(recipes.length, "pattern")} for ${sayCount(notebooks.length, "notebook")}`;
  return previewScene({ id: "preview", book: "", title: book.title, words, page });
}
