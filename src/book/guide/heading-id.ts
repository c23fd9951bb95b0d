/** The id by which a heading of the guide is linked to. */

/** Its words in small letters, joined by hyphens, from the first letter on; a number behind it where the page has that id already. */
export function headingId(words: string, used: Set<string>): string {
  const plain =
    words
      .toLowerCase()
      .replace(/[`’']/g, "")
      .replace(/[^a-z0-9]+/g, "-")
      .replace(/^[^a-z]+|-$/g, "") || "part";
  let id = plain;
  for (let count = 2; used.has(id); count++) id = `${plain}-${count}`;
  used.add(id);
  return id;
}
