/** Copies a link out of the field that shows it. */

/** From disk a browser may not give the clipboard: then the link is at least selected. */
export async function copyLink(
  link: HTMLInputElement,
  say: (words: string) => void,
): Promise<void> {
  try {
    await navigator.clipboard.writeText(link.value);
    say("The link is copied.");
  } catch {
    link.focus();
    link.select();
    say("Copy the link that is selected now.");
  }
}
