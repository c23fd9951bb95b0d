/** One address for one file, however it was asked for: that is what things are kept under. */

/** Without question and fragment; a folder stands for its page. */
export function fileAddress(address: string): string {
  const url = new URL(address);
  const path = url.pathname.endsWith("/") ? `${url.pathname}index.html` : url.pathname;
  return url.origin + path;
}
