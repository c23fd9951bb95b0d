/** What the content of a page is written with: operators, of which none is repeated that still holds. */

export interface Operators {
  /** What holds for all that follows until another value is given for the same thing, such as a colour. */
  hold<Value extends string | number>(
    thing: string,
    value: Value,
    operatorOf: (value: Value) => string,
  ): void;
  /** What draws a path. */
  draw(operators: string): void;
  /** What shows text. */
  show(operators: string): void;
  /** All that was written. */
  take(): string;
}

/** An empty list. What holds on the page before it is not known to it. */
export function openOperators(): Operators {
  const held = new Map<string, string | number>();
  let written = "";
  let isText = false;
  const setText = (isNow: boolean) => {
    if (isText !== isNow) written += isNow ? "BT\n" : "ET\n";
    isText = isNow;
  };
  return {
    hold(thing, value, operatorOf) {
      if (held.get(thing) === value) return;
      held.set(thing, value);
      written += `${operatorOf(value)}\n`;
    },
    draw(operators) {
      setText(false);
      written += `${operators}\n`;
    },
    show(operators) {
      setText(true);
      written += `${operators}\n`;
    },
    take() {
      setText(false);
      return written;
    },
  };
}

/** With six decimals, as PDFKit writes numbers. */
export function decimal(value: number): string {
  return String(Math.round(value * 1e6) / 1e6);
}

/** The colour `#rrggbb` of lines. */
export function strokeOperator(colour: string): string {
  return `${colourNumbers(colour)} RG`;
}

/** The colour of areas and letters. */
export function fillOperator(colour: string): string {
  return `${colourNumbers(colour)} rg`;
}

/** Three decimals tell all 256 steps apart. */
function colourNumbers(colour: string): string {
  const channel = (start: number) =>
    Math.round((Number.parseInt(colour.slice(start, start + 2), 16) / 255) * 1000) / 1000;
  return `${channel(1)} ${channel(3)} ${channel(5)}`;
}
