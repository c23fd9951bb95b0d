/** A form whose script is loaded with the first touch of it. */

/** Until the form's own script is there: what was pressed last is pressed again, and what was typed is read. */
export function bindFirstTouch(form: HTMLFormElement, open: () => Promise<unknown>): void {
  let again: (() => void) | undefined;
  const wait = (act?: () => void) => {
    again = act ?? again;
    void open().then(
      () => {
        for (const [name, listener] of listeners) form.removeEventListener(name, listener);
        again?.();
        again = undefined;
      },
      () => undefined,
    );
  };
  const listeners: readonly (readonly [string, (event: Event) => void])[] = [
    ["focusin", () => wait()],
    ["submit", (event) => event.preventDefault()],
    [
      "click",
      ({ target }) => {
        const button = target instanceof Element ? target.closest("button") : null;
        if (button) wait(() => button.click());
      },
    ],
    [
      "input",
      ({ target }) => {
        if (!(target instanceof HTMLInputElement || target instanceof HTMLSelectElement)) return;
        const { value } = target;
        wait(() => {
          target.value = value;
          target.dispatchEvent(new Event("input", { bubbles: true }));
        });
      },
    ],
  ];
  for (const [name, listener] of listeners) form.addEventListener(name, listener);
  form.removeAttribute("data-enhance");
}
