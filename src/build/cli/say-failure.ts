/** The words for a build that failed: short where the disk or the system refused, with a trace where we are to blame. */

/** What the system gives an error of its own; Node's and ours have a line under them, or none at all. */
const SYSTEM_CODE = /^E[A-Z0-9]+$/;

export interface SystemError extends Error {
  readonly code: string;
  readonly path?: string;
  readonly dest?: string;
}

/** Errors from the outermost to the one that it began with: Eleventy wraps what a template threw. */
export function errorsIn(error: unknown): readonly Error[] {
  const errors: Error[] = [];
  let inner: unknown = error;
  while (inner instanceof Error && !errors.includes(inner)) {
    errors.push(inner);
    inner = "originalError" in inner ? inner.originalError : inner.cause;
  }
  return errors;
}

/** The system's error that it began with; undefined where no disk and no system refused anything. */
export function systemErrorIn(error: unknown): SystemError | undefined {
  return errorsIn(error).find(isSystemError);
}

/** All messages, and the trace of the innermost error: it tells what happened and where. */
export function sayFailure(what: string, error: unknown): string {
  const errors = errorsIn(error);
  const messages = errors.length > 0 ? errors.map(({ message }) => message) : [String(error)];
  const trace = systemErrorIn(error) ? [] : [errors.at(-1)?.stack ?? ""];
  return [what, ...new Set(messages), ...trace].join("\n");
}

function isSystemError(error: Error): error is SystemError {
  return "code" in error && typeof error.code === "string" && SYSTEM_CODE.test(error.code);
}
