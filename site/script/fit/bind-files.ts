/** The link to the page, and opening the file of a notebook. */
import { writeFitAddress } from "../../../src/view/address/fit-address.ts";
import { bindFileField } from "../app/open-file-field.ts";
import { copyLink } from "../ui/copy-link.ts";
import { onPress, theOne } from "../ui/parts.ts";
import type { FitStore } from "./fit-store.ts";

interface Keeping {
  readonly load: (name: string) => Promise<void>;
  readonly say: (words: string) => void;
}

/** Keeps the link current, and takes files in. */
export function bindKeeping(page: Document, store: FitStore, { load, say }: Keeping): void {
  const link = theOne(page, "#link", HTMLInputElement);
  store.subscribe(({ fit }) => {
    link.value = new URL(writeFitAddress(fit), page.location.href).href;
  });
  onPress(page, "copy-link", () => void copyLink(link, say));
  const { carried } = store.catalogue;
  bindFileField(page, {
    load,
    say,
    carried: () => carried,
    kind: "notebook",
    take: ({ notebook }) => store.update({ notebook }),
  });
}
