/** A button that makes a file: one at a time, and what came of it. */

/** One file at a time from a button; a failure is told. */
export async function whileBusy(
  button: HTMLElement,
  say: (words: string) => void,
  act: () => Promise<void>,
): Promise<void> {
  if (button.ariaBusy === "true") return;
  button.ariaBusy = "true";
  say("The file is being made.");
  try {
    await act();
    say("The file is made.");
  } catch (error) {
    console.error(error);
    say("The file could not be made: a part of this page is missing.");
  } finally {
    button.ariaBusy = null;
  }
}
