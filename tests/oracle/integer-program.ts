/** Small integer programs in the text form that the highs solver reads, and its whole-number answers. */
import loadHighs from "highs";

/** A sum of whole multiples of variables. */
export type Sum = readonly (readonly [number, string])[];

export interface Program {
  readonly goal: "Minimize" | "Maximize";
  readonly of: Sum;
  /** Each: sum, relation, whole number. */
  readonly where: readonly (readonly [Sum, "<=" | "=" | ">=", number])[];
  /** Each variable is whole and lies within its bounds. */
  readonly bounds: ReadonlyMap<string, readonly [number, number]>;
}

/** Solves a program: the best value of the goal and the variables, or undefined where nothing satisfies it. */
export type Solve = (
  program: Program,
) => { readonly best: number; readonly values: ReadonlyMap<string, number> } | undefined;

/** The solver, once loaded. Answers must be whole to within a millionth. */
export async function integerSolver(): Promise<Solve> {
  const highs = await loadHighs();
  return (program) => {
    const { Status, ObjectiveValue, Columns } = highs.solve(textOf(program), {
      output_flag: false,
    });
    if (Status === "Infeasible") return undefined;
    if (Status !== "Optimal") throw new Error(`the solver ended with ${Status}`);
    const values = Object.entries(Columns).map(([name, column]) => {
      if (!("Primal" in column)) throw new Error(`the solver has no value for ${name}`);
      return [name, whole(column.Primal)] as const;
    });
    return { best: whole(ObjectiveValue), values: new Map(values) };
  };
}

function textOf({ goal, of, where, bounds }: Program): string {
  const rows = where.map(([sum, relation, to], i) => ` r${i}: ${sumText(sum)} ${relation} ${to}`);
  const limits = [...bounds].map(([name, [least, most]]) => ` ${least} <= ${name} <= ${most}`);
  const names = [...bounds.keys()].map((name) => ` ${name}`);
  return [
    goal,
    ` goal: ${sumText(of)}`,
    "Subject To",
    ...rows,
    "Bounds",
    ...limits,
    "Generals",
    ...names,
    "End",
    "",
  ].join("\n");
}

function sumText(sum: Sum): string {
  return sum
    .map(([times, name]) => `${times < 0 ? "-" : "+"} ${Math.abs(times)} ${name}`)
    .join(" ");
}

function whole(value: number): number {
  const rounded = Math.round(value);
  if (Math.abs(value - rounded) > 1e-6) throw new Error(`the solver's ${value} is not whole`);
  return rounded === 0 ? 0 : rounded;
}
