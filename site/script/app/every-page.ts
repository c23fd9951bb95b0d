/** What every page does by itself: opens patterns on the keeper's own notebook, keeps the book on the device, and prints. */
import { openDevice } from "../device/device.ts";
import { bindMyNotebook } from "../device/my-notebook.ts";
import { keepOffline } from "../offline/register-worker.ts";
import { ownAddress } from "../ui/load-script.ts";
import { bindPrintCorrection } from "./print-correction.ts";

const device = openDevice(window, ownAddress());
bindMyNotebook(document, device);
bindPrintCorrection(window, device);

void keepOffline(document, document.currentScript?.dataset.worker);

for (const button of document.querySelectorAll<HTMLButtonElement>("[data-print]")) {
  button.hidden = false;
  button.addEventListener("click", () => window.print());
}
