/** What a device keeps of a book: taken over from build to build over any connection, and found again without one. */
import { afterEach, describe, expect, it, vi } from "vitest";
import { openKeptFiles } from "../../site/script/offline/cached-files.ts";
import { answer, isAnswered } from "../../site/script/offline/respond.ts";
import { addressOf, BOOK, fakeWorld, type Served } from "./fake-worker-scope.ts";

/** A server that has everything but what is named here. */
const serving =
  (but: Readonly<Record<string, Served>> = {}) =>
  (path: string): Served =>
    but[path] ?? "fresh";

const OLD = "old: a.html b.html book.css";

interface Carried {
  readonly caches: readonly string[];
  readonly network: (path: string) => Served;
  readonly after: readonly string[];
}

const CARRIED: readonly (readonly [name: string, Carried])[] = [
  [
    "over a good connection the old build goes",
    {
      caches: [OLD, "own: book.css"],
      network: serving(),
      after: ["own: a.html b.html book.css"],
    },
  ],
  [
    "without a connection all of it stays",
    { caches: [OLD, "own: book.css"], network: () => "dead", after: [OLD, "own: book.css"] },
  ],
  [
    "over a connection that breaks it stays whole, and what came is kept",
    {
      caches: [OLD, "own: book.css"],
      network: serving({ "b.html": "dead" }),
      after: [OLD, "own: a.html book.css"],
    },
  ],
  [
    "where the server fails it stays whole",
    {
      caches: [OLD, "own: book.css"],
      network: serving({ "b.html": 503 }),
      after: [OLD, "own: a.html book.css"],
    },
  ],
  [
    "when the rest comes at last it goes",
    {
      caches: [OLD, "own: a.html book.css"],
      network: serving({ "a.html": "dead" }),
      after: ["own: a.html b.html book.css"],
    },
  ],
  [
    "a page does not come without what it loads",
    {
      caches: [OLD, "own: book.css"],
      network: serving({ "b.html": '<img src="a.svg">', "a.svg": "dead" }),
      after: [OLD, "own: a.html book.css"],
    },
  ],
  [
    "a page comes with what it loads",
    {
      caches: ["old: b.html", "own:"],
      network: serving({ "b.html": '<img src="a.svg"><script src="../other/x.js"></script>' }),
      after: ["own: a.svg b.html"],
    },
  ],
  [
    "a page that loads what is nowhere comes all the same",
    {
      caches: ["old: b.html", "own:"],
      network: serving({ "b.html": '<img src="a.svg">', "a.svg": 404 }),
      after: ["own: b.html"],
    },
  ],
  [
    "a page that the server does not have may be on its way up: its last build stays",
    {
      caches: [OLD, "own: book.css"],
      network: serving({ "b.html": 404 }),
      after: [OLD, "own: a.html book.css"],
    },
  ],
  [
    "a page that two builds do not have is gone",
    {
      caches: ["older: c.html", "old: a.html", "own:"],
      network: serving({ "c.html": 404 }),
      after: ["own: a.html"],
    },
  ],
  [
    "several builds go each for itself",
    {
      caches: ["older: c.html", "old: a.html", "own:"],
      network: serving({ "c.html": "dead" }),
      after: ["older: c.html", "own: a.html"],
    },
  ],
  [
    "a picture that is gone holds no build back",
    {
      caches: ["old: a.html a.svg", "own:"],
      network: serving({ "a.svg": 410 }),
      after: ["own: a.html"],
    },
  ],
  [
    "other books beside it and in it are left alone, and so is what was once kept of them here",
    {
      caches: [
        "https://lane.example/book/de v1: a.html",
        "https://lane.example/booklet v1: a.html",
        "old: https://lane.example/book/de/index.html a.html",
        "own:",
      ],
      network: serving(),
      after: [
        "https://lane.example/book/de v1: a.html",
        "https://lane.example/booklet v1: a.html",
        "own: a.html",
      ],
    },
  ],
];

describe("what earlier builds keep", () => {
  it.each(CARRIED)("%s", async (_, { caches, network, after }) => {
    const world = fakeWorld({ caches, network });
    await openKeptFiles(world.scope).carryOver();
    expect(world.kept()).toEqual(after);
  });

  it("is not touched while a newer build is fetched: its cache is one of the others", async () => {
    const caches = ["own: a.html", "newer: a.html"];
    const world = fakeWorld({ caches, network: serving(), isInstalling: true });
    await openKeptFiles(world.scope).carryOver();
    expect(world.kept()).toEqual(caches);
  });

  it("is fetched once for all pages that ask at the same time", async () => {
    const world = fakeWorld({ caches: ["old: a.html", "own:"], network: serving() });
    const kept = openKeptFiles(world.scope);
    await Promise.all([kept.carryOver(), kept.carryOver()]);
    expect(world.asked).toEqual(["a.html"]);
  });
});

describe("what is asked to be kept", () => {
  it.each([
    ["all of it", serving(), 0, "own: a.html b.html"],
    ["what can be had", serving({ "a.html": "dead" }), 1, "own: b.html"],
    ["what is there", serving({ "b.html": 404 }), 1, "own: a.html"],
  ])("is %s", async (_, network, failures, after) => {
    const world = fakeWorld({ caches: ["own:"], network });
    const wanted = ["a.html", "b.html"].map(addressOf);
    expect(await openKeptFiles(world.scope).fetchSome(wanted)).toBe(failures);
    expect(world.kept()).toEqual([after]);
  });

  it.each([
    ["comes whole", serving(), true],
    ["or is not taken over", serving({ "b.html": 404 }), false],
    ["or is not taken over, the server failing", serving({ "b.html": 500 }), false],
  ])("from the start %s", async (_, network, isWhole) => {
    const world = fakeWorld({ caches: ["own:"], network });
    const fetched = openKeptFiles(world.scope).fetchAll(["a.html", "b.html"].map(addressOf));
    expect(
      await fetched.then(
        () => true,
        () => false,
      ),
    ).toBe(isWhole);
  });
});

describe("a kept file", () => {
  const CACHES = ["older: a.html b.html c.html book.css", "old: a.html b.html", "own: a.html"];

  it.each([
    ["is this build's", "a.html", undefined, "own"],
    ["else the newest other's", "b.html", undefined, "old"],
    ["else an older one's", "c.html", undefined, "older"],
    ["or nowhere", "patterns/index.html", undefined, undefined],
    ["is the same with a question and a fragment", "a.html?x#y", undefined, "own"],
  ])("%s: %s", async (_, path, around, from) => {
    const { scope } = fakeWorld({ caches: CACHES });
    const found = await openKeptFiles(scope).find(addressOf(path), around);
    expect(await found?.text()).toBe(from);
  });

  it.each([
    ["an old page", "b.html", "old"],
    ["a page of this build", "a.html", "own"],
    ["a page that is kept nowhere", "patterns/index.html", "own"],
  ])("that a page loads is of the page's own build: %s", async (_, around, from) => {
    const caches = ["old: a.html b.html book.css", "own: a.html book.css"];
    const { scope } = fakeWorld({ caches });
    const found = await openKeptFiles(scope).find(addressOf("book.css"), addressOf(around));
    expect(await found?.text()).toBe(from);
  });
});

/** A request as a page makes it, or the opening of a page. */
function requestFor(path: string): Request {
  const mode = path.endsWith(".html") ? "navigate" : "no-cors";
  return Object.defineProperty(new Request(addressOf(path)), "mode", { value: mode });
}

async function answered(
  path: string,
  caches: readonly string[],
  network: (path: string) => Served,
): Promise<string> {
  const world = fakeWorld({ caches, network, clients: { one: addressOf("b.html") } });
  const works: Promise<unknown>[] = [];
  const found = await answer({
    request: requestFor(path),
    clientId: path.endsWith(".html") ? "" : "one",
    kept: openKeptFiles(world.scope),
    scope: world.scope,
    later: (work) => void works.push(work),
  });
  await Promise.all(works);
  const text = await found.text();
  return `${found.status} ${text.includes("not on this device yet") ? "not kept" : text}`.trim();
}

describe("a request", () => {
  const caches = ["old: b.html book.css", "own: a.html book.css"];

  it.each<[string, string, Served, string]>([
    ["is answered by the network", "a.html", "fresh", "200 fresh"],
    ["without one by what is kept", "a.html", "dead", "200 own"],
    ["without one by what an earlier build kept", "b.html", "dead", "200 old"],
    ["for a part of an old page by that page's build", "book.css", "dead", "200 old"],
    ["where the server fails by what is kept", "b.html", 502, "200 old"],
    ["for what is not there by the server that says so", "b.html", 404, "404"],
    ["where the server fails and nothing is kept by what the server says", "c.html", 503, "503"],
    ["without a connection and unkept by a page that says so", "c.html", "dead", "503 not kept"],
  ])("%s: %s", async (_, path, served, expected) => {
    expect(await answered(path, caches, () => served)).toBe(expected);
  });

  it("for a part that is nowhere fails as it would have", async () => {
    await expect(answered("a.svg", caches, () => "dead")).rejects.toThrow(TypeError);
  });

  it("leaves what came from the network with this build", async () => {
    const world = fakeWorld({ caches: ["own:"], network: serving() });
    const works: Promise<unknown>[] = [];
    const kept = openKeptFiles(world.scope);
    const later = (work: Promise<unknown>) => void works.push(work);
    const request = requestFor("a.html");
    await answer({ request, clientId: "", kept, scope: world.scope, later });
    await Promise.all(works);
    expect(world.kept()).toEqual(["own: a.html"]);
  });

  describe("to a server that says nothing", () => {
    afterEach(() => void vi.useRealTimers());

    it("is answered by what is kept, after a while", async () => {
      vi.useFakeTimers();
      const { scope } = fakeWorld({ caches });
      const silent = { ...scope, fetch: () => new Promise<Response>(() => {}) };
      const kept = openKeptFiles(silent);
      const request = requestFor("b.html");
      const found = answer({ request, clientId: "", kept, scope: silent, later: () => {} });
      await vi.advanceTimersByTimeAsync(10_000);
      expect(await (await found).text()).toBe("old");
    });
  });
});

describe("a request is the book's own", () => {
  const { scope } = fakeWorld({ caches: [] });

  it.each([
    ["its front page", BOOK, true],
    ["its front page with a question", `${BOOK}?q=week`, true],
    ["a page", `${BOOK}a.html`, true],
    ["a folder", `${BOOK}patterns/`, true],
    ["a PDF file, which is kept by whoever opened it", `${BOOK}patterns/a.pdf`, false],
    ["a book in a folder of it", `${BOOK}de/index.html`, false],
    ["a book beside it", "https://lane.example/booklet/index.html", false],
    ["a book around it", "https://lane.example/index.html", false],
  ])("%s", (_, address, isOwn) => {
    expect(isAnswered(new Request(address), scope)).toBe(isOwn);
  });
});
