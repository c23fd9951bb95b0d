/** SVG path data as a PDF writes paths: each number is copied as it is written. */

const SPACE = 0x20;
const COMMA = 0x2c;
const MINUS = 0x2d;
/** Above every digit, dot and sign. */
const FIRST_LETTER = 0x41;

/** The operators of path data with the commands that `path-data.ts` writes; throws on any other. */
export function pathOperators(d: string): string {
  let [x, y, operators] = ["0", "0", ""];
  let at = 0;
  const number = (): string => {
    while (d.charCodeAt(at) === SPACE || d.charCodeAt(at) === COMMA) at += 1;
    const start = at;
    at += 1;
    while (at < d.length && isInNumber(d.charCodeAt(at))) at += 1;
    return d.slice(start, at);
  };
  while (at < d.length) {
    const command = d[at];
    at += 1;
    if (command === "Z") {
      operators += "h\n";
      continue;
    }
    if (command === "H") x = number();
    else if (command === "V") y = number();
    else if (command === "M" || command === "L") {
      x = number();
      y = number();
    } else throw new TypeError(`path data with ${command}: ${d}`);
    operators += command === "M" ? `${x} ${y} m\n` : `${x} ${y} l\n`;
  }
  return operators;
}

/** A minus sign begins the next one. */
function isInNumber(code: number): boolean {
  return code < FIRST_LETTER && code !== SPACE && code !== COMMA && code !== MINUS;
}
