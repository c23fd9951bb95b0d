/** The address that opens a layout of one's own on the recipe page, on the device where it is kept. */
import { writeAddress } from "./hash-params.ts";

/** The notebook is the keeper's. */
export function writeMineAddress(slug: string): string {
  return writeAddress([["mine", slug]]);
}
