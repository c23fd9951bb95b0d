/** What the content of a page is written with: operators, of which none is repeated that still holds. */

export interface Operators {
  /** What holds for all that follows until another is given for the same thing, such as a colour. */
  hold(thing: string, operator: string): void;
  /** What draws a path. */
  draw(operators: string): void;
  /** What shows text. */
  show(operators: string): void;
  /** All that was written. */
  take(): string;
}

/** An empty list. What holds on the page before it is not known to it. */
export function openOperators(): Operators {
  const held = new Map<string, string>();
  let written = "";
  let isText = false;
  const setText = (isNow: boolean) => {
    if (isText !== isNow) written += isNow ? "BT\n" : "ET\n";
    isText = isNow;
  };
  return {
    hold(thing, operator) {
      if (held.get(thing) === operator) return;
      held.set(thing, operator);
      written += `${operator}\n`;
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

/** The three numbers of a colour `#rrggbb`: three decimals tell all 256 steps apart. */
export function colourNumbers(colour: string): string {
  const channel = (start: number) =>
    Math.round((Number.parseInt(colour.slice(start, start + 2), 16) / 255) * 1000) / 1000;
  return `${channel(1)} ${channel(3)} ${channel(5)}`;
}
