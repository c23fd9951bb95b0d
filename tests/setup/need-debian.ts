/** How a test gets a Debian package that it cannot do without: installed where that is allowed, else asked for. */
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const MINUTES = 60_000;

/**
 * Installs Debian packages when run as root; throws one line that says what to install when not, or when it fails.
 * Test files run side by side, so the step waits for its turn.
 */
export function needDebian(packages: readonly string[]): void {
  const names = packages.join(" ");
  if (process.getuid?.() !== 0)
    throw new Error(`These tests need ${names}: run \`sudo apt-get install ${names}\` once.`);
  const turn = join(tmpdir(), "spanbook-need-debian.lock");
  const script = `apt-get update -q && apt-get install -y -q --no-install-recommends ${names}`;
  const { status, error, stderr } = spawnSync("flock", [turn, "sh", "-c", script], {
    encoding: "utf8",
    env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" },
    timeout: 10 * MINUTES,
  });
  if (status === 0) return;
  const last = error?.message ?? stderr.trim().split("\n").at(-1) ?? "";
  throw new Error(`These tests need ${names}, and apt-get could not install it: ${last}`);
}

/** A program of Debian packages, at the place where they put it. */
export function debianProgram(path: string, packages: readonly string[]): string {
  if (!existsSync(path)) needDebian(packages);
  return path;
}
