/** What every page does by itself: opens patterns on the keeper's own notebook, keeps the book on the device, and prints. */
import { openDevice } from "../device/device.ts";
import { keepNotebook } from "../device/my-notebook.ts";
import { keepOffline } from "../offline/register-worker.ts";

keepNotebook(document, openDevice());

void keepOffline(document, document.currentScript?.dataset.worker);

for (const button of document.querySelectorAll<HTMLButtonElement>("[data-print]")) {
  button.hidden = false;
  button.addEventListener("click", () => window.print());
}
