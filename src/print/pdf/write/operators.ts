/** What lines and areas are drawn with: operators, of which none is repeated that still holds. */
import type PDFDocument from "pdfkit";

export interface Operators {
  /** What holds for all that follows until another value is given for the same thing, such as a colour. */
  hold<Value extends string | number>(
    thing: string,
    value: Value,
    operatorOf: (value: Value) => string,
  ): void;
  /** What draws a path. */
  draw(operators: string): void;
  /** Puts what was written on the page. What holds still holds afterwards. */
  end(): void;
}

const ASCII = new TextEncoder();

/** Nothing is written. What holds on the page before it is not known to it. */
export function openOperators(pdf: PDFDocument): Operators {
  const held = new Map<string, string | number>();
  let written = "";
  return {
    hold(thing, value, operatorOf) {
      if (held.get(thing) === value) return;
      held.set(thing, value);
      written += `${operatorOf(value)}\n`;
    },
    draw(operators) {
      written += `${operators}\n`;
    },
    end() {
      // Bytes, because PDFKit turns a text into them letter by letter.
      if (written !== "") pdf.addContent(ASCII.encode(written));
      written = "";
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
