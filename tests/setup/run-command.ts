/** Runs the book's commands as a person does, and tells what came of it. */
import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";

/** The project's folder, with a slash at its end. */
export const PROJECT = fileURLToPath(new URL("../../", import.meta.url));

/** What all commands begin with. */
export const LAUNCH = `${PROJECT}src/build/cli/launch.mjs`;

export interface Outcome {
  readonly code: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

/** What to run it in: another folder, another environment; and another program than the project's own. */
export interface Around {
  readonly cwd?: string;
  readonly env?: Readonly<Record<string, string>>;
  readonly launch?: string;
}

/** `runCommand(["build", "--content=…"])`: what `npm run build -- --content=…` does. */
export function runCommand(
  words: readonly string[],
  { cwd = PROJECT, env = {}, launch = LAUNCH }: Around = {},
): Outcome {
  const { INIT_CWD: _, ...inherited } = process.env;
  const { status, stdout, stderr } = spawnSync(process.execPath, [launch, ...words], {
    cwd,
    env: { ...inherited, ...env },
    encoding: "utf8",
  });
  return { code: status, stdout, stderr };
}
