/** What a host reads when a build fails: one line where the system refused, the stack where the fault is ours. */
import { describe, expect, it } from "vitest";
import { sayFailure } from "../../src/book/say-failure.ts";

/** As Node makes them. */
function refusal(code: string, path?: string): Error {
  return Object.assign(new Error(`${code}: as the system says`), {
    code,
    syscall: "open",
    ...(path && { path }),
  });
}

describe("what the system refused", () => {
  it.each([
    ["ENOSPC", undefined, "The output /a/book cannot be written: the disk is full."],
    ["ENOSPC", "/a/book.new-1/x.svg", "The output /a/book cannot be written: the disk is full."],
    ["EACCES", "/a", "The output /a/book cannot be written: you are not allowed to write there."],
    ["EODD", "/a/book", "The output /a/book cannot be written: EODD: as the system says."],
  ])("%s at %s blames the output", (code, path, line) => {
    expect(sayFailure(refusal(code, path), "/a/book")).toBe(
      `${line} Mend that, or choose another with --output=FOLDER.`,
    );
  });

  it("elsewhere blames that place", () => {
    expect(sayFailure(refusal("EMFILE", "/b/pieces"), "/a/book")).toBe(
      "The book could not be built, for /b/pieces cannot be used: too many files are open.",
    );
  });

  it("is found inside of what was thrown around it", () => {
    const thrown = new Error("a page failed", { cause: refusal("EROFS", "/a/book/x") });
    expect(sayFailure(thrown, "/a/book")).toContain("it can only be read there");
  });
});

it("a fault of our own is told with everything around it, and where it came from", () => {
  const fault = new RangeError("no such track");
  const said = sayFailure(new Error("a page failed", { cause: fault }), "/a/book");
  expect(said).toBe(
    `The book could not be built.\na page failed\nno such track\n${fault.stack ?? ""}`,
  );
});
