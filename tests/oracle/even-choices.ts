/**
 * Which k of n places a hand would take to spread k things evenly, found by looking at every choice of k of n.
 * Even means balanced around the circle: stretches of equal length hold numbers that differ by at most 1.
 */

/** One choice: which places are taken. */
export type Choice = readonly boolean[];

/** Every choice of k of n places, the earliest first. */
export function* allChoices(taken: number, places: number): Generator<Choice> {
  if (taken < 0 || taken > places) return;
  if (places === 0) yield [];
  else {
    for (const rest of allChoices(taken - 1, places - 1)) yield [true, ...rest];
    for (const rest of allChoices(taken, places - 1)) yield [false, ...rest];
  }
}

/**
 * The choice that the rule asks for: a mirror image of itself wherever one exists, else the earliest. Where both kinds
 * exist but not in one (2 of 4), the mirror-symmetric one that keeps nearest to the line of slope k/n from the first
 * place to the last, of equals the earliest.
 */
export function mostEvenChoice(taken: number, places: number): Choice {
  const choices = [...allChoices(taken, places)];
  const mirrored = choices.filter(isMirrored);
  const even = choices.filter(isBalanced);
  const chosen = mirrored.find(isBalanced) ?? nearestToLine(mirrored) ?? even[0];
  if (!chosen) throw new RangeError(`no choice of ${taken} of ${places}`);
  return chosen;
}

export function isMirrored(choice: Choice): boolean {
  return choice.every((taken, i) => taken === choice[choice.length - 1 - i]);
}

export function isBalanced(choice: Choice): boolean {
  for (let width = 1; width < choice.length; width++) {
    const held = choice.map((_, from) => countWithin(choice, from, width));
    if (Math.max(...held) - Math.min(...held) > 1) return false;
  }
  return true;
}

function countWithin(choice: Choice, from: number, width: number): number {
  let count = 0;
  for (let i = from; i < from + width; i++) if (choice[i % choice.length]) count++;
  return count;
}

function nearestToLine(choices: readonly Choice[]): Choice | undefined {
  let best: { choice: Choice; away: number } | undefined;
  for (const choice of choices) {
    const away = awayFromLine(choice);
    if (best === undefined || away < best.away) best = { choice, away };
  }
  return best?.choice;
}

/** The most by which the number taken so far, times n, differs from the line's height times n. */
function awayFromLine(choice: Choice): number {
  const taken = choice.filter(Boolean).length;
  let so = 0;
  const away = choice.map((isTaken, i) => {
    if (isTaken) so++;
    return Math.abs(so * choice.length - (i + 1) * taken);
  });
  return Math.max(0, ...away);
}

/** Are two choices the same when one is turned around the circle? */
export function isRotation(a: Choice, b: Choice): boolean {
  return (
    a.length === b.length && (a.length === 0 || a.some((_, turn) => isSame(turned(a, turn), b)))
  );
}

function turned(choice: Choice, turn: number): Choice {
  return [...choice.slice(turn), ...choice.slice(0, turn)];
}

function isSame(a: Choice, b: Choice): boolean {
  return a.every((taken, i) => taken === b[i]);
}
