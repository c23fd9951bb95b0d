/** What a served book has beside its pages: a build writes these files, and a server makes one when somebody asks for it. */
import { extname } from "node:path/posix";
import type { Book } from "./book.ts";
import { pagesAt } from "./pages-at.ts";

/** By the ends of their names, as the IANA registers them. */
const MEDIA_TYPES: Readonly<Record<string, string>> = {
  ".js": "text/javascript",
  ".json": "application/json",
  ".md": "text/markdown; charset=utf-8",
  ".pdf": "application/pdf",
  ".svg": "image/svg+xml",
  ".webmanifest": "application/manifest+json",
  ".xml": "application/xml",
};

/** The file at a path of the book, such as "patterns/facts.js"; `undefined` where it has none there. */
export async function serveFile(path: string, book: Book): Promise<Response | undefined> {
  const type = MEDIA_TYPES[extname(path)];
  if (type === undefined) return undefined;
  const headers = { "content-type": type };
  try {
    if (extname(path) === ".pdf") {
      const bytes = await book.askPdf(path);
      return bytes && new Response(new Uint8Array(bytes), { headers });
    }
    const text = textAt(path, book);
    return text === undefined ? undefined : new Response(text, { headers });
  } catch (error) {
    console.error(error);
    return new Response("This file cannot be made.", { status: 500 });
  }
}

function textAt(path: string, book: Book): string | undefined {
  const list = book.listFiles.find((file) => file.path === path);
  if (list) return list.text();
  const folder = path.slice(0, path.lastIndexOf("/"));
  for (const file of book.sideFiles(pagesAt(folder, book.all))) {
    if (file.path === path) return file.text;
  }
  return undefined;
}
