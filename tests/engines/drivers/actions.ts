/** A hand's movements as WebDriver wants them ("Actions"): the classic protocol and BiDi take the same ones. */

/** One press of the left button. */
export function pressAt(x: number, y: number): readonly unknown[] {
  const actions = [
    { type: "pointerMove", x, y, duration: 0 },
    { type: "pointerDown", button: 0 },
    { type: "pointerUp", button: 0 },
  ];
  return [{ type: "pointer", id: "mouse", parameters: { pointerType: "mouse" }, actions }];
}

/** Each key down and up again, one after another. */
export function typeKeys(keys: string): readonly unknown[] {
  const actions = [...keys].flatMap((value) => [
    { type: "keyDown", value },
    { type: "keyUp", value },
  ]);
  return [{ type: "key", id: "keyboard", actions }];
}
