/** Slugs: the names of files, which are the names of pages too. */

/** Names that Windows keeps for devices, with any ending (Microsoft, "Naming Files, Paths, and Namespaces"). */
const DEVICE = /^(?:con|prn|aux|nul|com[1-9]|lpt[1-9])$/;

/** The rule of file names, so that a name can never lead out of a folder, and a book can be unpacked everywhere. */
export const SLUG = new RegExp(`^(?!${DEVICE.source.slice(1)})[a-z0-9][a-z0-9-]*$`);

export const LONGEST_SLUG = 80;

/** The slug that a name was probably meant to be, without marks, spaces, folder and ending; "" where none is left. */
export function slugFrom(name: string): string {
  return plainSlug(name.replace(/^.*[\\/]/, "").replace(/\.[^.]*$/, ""));
}

/** What of a text may stand in a slug of so many characters; "" where nothing may. A device's name gets a number. */
export function plainSlug(text: string, longest = LONGEST_SLUG): string {
  const plain = text
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .slice(0, longest)
    .replace(/^-+|-+$/g, "");
  return isDeviceName(plain) ? `${plain}-1` : plain;
}

/** Is it a name that no file can have on Windows? */
export function isDeviceName(name: string): boolean {
  return DEVICE.test(name);
}

/** Can a file be called so? */
export function isSlug(name: string): boolean {
  return SLUG.test(name) && name.length <= LONGEST_SLUG;
}

/** `patterns/seed-list.md` is `seed-list`. */
export function slugOf(path: string): string {
  return path.slice(path.lastIndexOf("/") + 1).replace(/\.md$/, "");
}
