/** The words for what became of something that somebody keeps on the device. */

/** A browser may keep it for the visit only. */
export function sayKept(title: string, persists: boolean): string {
  return persists
    ? `“${title}” is kept on this device.`
    : `“${title}” is kept until you leave this page: the browser cannot save it for longer. To keep it, save it as a file or a link.`;
}
