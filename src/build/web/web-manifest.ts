/** What a phone is told when a book is put on its home screen. */
import { COLOURS } from "../../draw/style/role-style.ts";
import type { SideFile } from "../artifacts/side-files.ts";

/** All addresses are relative to the file itself, so that the folder may lie anywhere (W3C, Web Application Manifest). */
export function manifestFile(title: string): SideFile {
  const manifest = {
    name: title,
    short_name: title,
    lang: "en",
    start_url: "index.html",
    scope: "./",
    // A book has pages to go back from: a window with that button where there is one, else one of its own.
    display: "standalone",
    display_override: ["minimal-ui"],
    background_color: COLOURS.ground,
    theme_color: COLOURS.paper,
    icons: [
      { src: "assets/icon.svg", sizes: "any", type: "image/svg+xml" },
      { src: "assets/icon-192.png", sizes: "192x192", type: "image/png" },
      { src: "assets/icon-512.png", sizes: "512x512", type: "image/png" },
      {
        src: "assets/icon-512-maskable.png",
        sizes: "512x512",
        type: "image/png",
        purpose: "maskable",
      },
    ],
  };
  return { path: "manifest.webmanifest", text: `${JSON.stringify(manifest, null, 1)}\n` };
}
