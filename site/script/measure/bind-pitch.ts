/** A notebook's pitch, measured over many steps, and taken to the page. */
import { sayFieldIssue } from "../../../src/issue/words/say-field-issue.ts";
import { writeFitAddress } from "../../../src/view/address/fit-address.ts";
import type { Catalogue } from "../../../src/view/catalogue.ts";
import { fieldsOf } from "../../../src/view/fields/notebook-fields.ts";
import { readPitch, sayPitch } from "../../../src/view/fields/pitch-check.ts";
import { readFields } from "../../../src/view/fields/read-notebook-fields.ts";
import { startFit } from "../app/initial-state.ts";
import type { Device } from "../device/device.ts";
import { readForm, showErrors } from "../ui/form.ts";
import { partOf, theOne } from "../ui/parts.ts";

interface MeasurePage {
  readonly device: Device;
  readonly catalogue: Catalogue;
}

/** Follows the two fields; nothing is said of fields that are still empty. */
export function bindPitch(page: Document, { device, catalogue }: MeasurePage): void {
  const form = theOne(page, '[data-part="pitch"]', HTMLFormElement);
  const words = partOf(page, "pitch-words");
  const link = theOne(page, '[data-part="pitch-link"]', HTMLAnchorElement);
  form.addEventListener("submit", (event) => event.preventDefault());
  form.addEventListener("input", () => {
    const texts = readForm(form, ["steps", "length"]);
    const reading = readPitch(texts);
    const issues = reading.ok
      ? []
      : reading.issues.filter(({ field }) => texts[field].trim() !== "");
    showErrors(form, issues);
    words.textContent = reading.ok ? sayPitch(reading.value) : "";
    link.hidden = true;
    if (reading.ok) offer(reading.value.likely ?? Number(reading.value.pitch.toFixed(2)));
  });

  /** The notebook on the page with this pitch, if its dots still lie on the paper then. */
  function offer(pitch: number): void {
    const { fit } = startFit("", device, catalogue);
    const fields = { ...fieldsOf(fit.notebook), pitch: `${pitch}` };
    const reading = readFields(fields);
    if (!reading.ok) {
      const [issue] = reading.issues;
      if (issue)
        words.textContent += ` For the notebook on the fit page it would not do: ${sayFieldIssue(issue)}`;
      return;
    }
    link.hash = writeFitAddress({ ...fit, notebook: reading.value });
    link.textContent = `Take ${pitch} mm to the fit page`;
    link.hidden = false;
  }
}
