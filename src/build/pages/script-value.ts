/** Plain data as the text of a script that makes it again: equal, and with the same parts shared. */

/**
 * An expression for data of objects, lists, strings, numbers, true, false and null. What stands in it in several
 * places, as the area of a repeated track does, is one thing again: the engine edits a recipe by its parts.
 */
export function scriptValue(data: unknown): string {
  const names = new Map<object, string>();
  const shared = sharedParts(data);
  const declared = shared.map((part, index) => {
    const text = textOf(part, names);
    names.set(part, `s${index}`);
    return `s${index}=${text}`;
  });
  const text = textOf(data, names);
  return declared.length === 0 ? text : `(()=>{const ${declared.join(",")};return ${text}})()`;
}

/** The parts that stand in several places, each behind all that stand in it. */
function sharedParts(data: unknown): readonly object[] {
  const seen = new Set<object>();
  const shared = new Set<object>();
  const order: object[] = [];
  const visit = (part: unknown): void => {
    if (typeof part !== "object" || part === null) return;
    if (seen.has(part)) {
      shared.add(part);
      return;
    }
    seen.add(part);
    for (const inner of Object.values(part)) visit(inner);
    order.push(part);
  };
  visit(data);
  return order.filter((part) => shared.has(part));
}

function textOf(part: unknown, names: ReadonlyMap<object, string>): string {
  // A recipe's maximum may be endless, which JSON cannot say.
  if (part === Number.POSITIVE_INFINITY) return "1/0";
  if (typeof part !== "object" || part === null) return JSON.stringify(part) ?? "null";
  const name = names.get(part);
  if (name !== undefined) return name;
  if (Array.isArray(part)) return `[${part.map((inner) => textOf(inner, names)).join(",")}]`;
  const entries = Object.entries(part)
    .filter(([, inner]) => inner !== undefined)
    .map(([key, inner]) => `${JSON.stringify(key)}:${textOf(inner, names)}`);
  return `{${entries.join(",")}}`;
}
