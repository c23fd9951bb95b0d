/** What the part that counts dots from a photo gives to the fit page, once it is loaded. */

export interface PhotoPart {
  /** Puts all that is needed into a place of the page. */
  open(work: PhotoWork): void;
}

export interface PhotoWork {
  readonly place: HTMLElement;
  /** The notebook's fields: its paper is read there, and what was counted is filled in as if it were typed. */
  readonly form: HTMLFormElement;
  readonly say: (words: string) => void;
}

declare global {
  interface Window {
    readonly spanbookPhoto?: PhotoPart;
  }
}

/** The part, loaded if it is not there yet. Rejects where its script cannot be loaded. */
export async function photoPart(
  window: Window,
  load: (name: string) => Promise<void>,
): Promise<PhotoPart> {
  await load("photo.js");
  if (window.spanbookPhoto) return window.spanbookPhoto;
  throw new Error("the part that counts from photos is not what was expected");
}
