/** Writes what the gallery shows into its address, as a step that can be taken back or in place of the last one. */

export type Step = "new" | "same";

/** `address` is the part from # on, or "" for none. */
export function setAddress({ history, location }: Window, address: string, step: Step): void {
  const href = location.href.replace(/#.*$/, "") + address;
  if (href === location.href) return;
  try {
    if (step === "new") history.pushState(null, "", href);
    else history.replaceState(null, "", href);
  } catch {
    // A browser may refuse an address that changes too often; the next change will try again.
  }
}
