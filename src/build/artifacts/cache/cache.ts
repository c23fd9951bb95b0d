/** Finished pieces by what they were made from: in memory between rebuilds, on disk between runs. */
import { createHash } from "node:crypto";
import { type PieceFolder, pieceFolder } from "./disk-cache.ts";

/** A memo of pieces of one kind; a piece is plain JSON. */
export interface Memo<Piece> {
  /** The piece made from these sources, or `make()` where there is none yet. */
  take(sources: readonly string[], make: () => Piece): Piece;
  /** Is there a piece made from these sources? Only looks, and counts nothing. */
  has(sources: readonly string[]): boolean;
  /** Keeps a piece that was made elsewhere, and counts it as made. */
  put(sources: readonly string[], piece: Piece): void;
  /** How many pieces were found and how many were made since the last call; clears the disk of what is too much. */
  settle(): MemoTally;
}

export interface MemoTally {
  readonly found: number;
  readonly made: number;
}

export interface MemoLimits {
  readonly memoryBytes: number;
  readonly diskBytes: number;
}

const LIMITS: MemoLimits = { memoryBytes: 16 << 20, diskBytes: 256 << 20 };

/** A memo that keeps its pieces in a folder of its own. */
export function openMemo<Piece>(folder: string, given: Partial<MemoLimits> = {}): Memo<Piece> {
  const limits = { ...LIMITS, ...given };
  const disk = pieceFolder(folder);
  const shelf = openShelf<Piece>(limits.memoryBytes);
  const used = new Set<string>();
  let found = 0;
  let made = 0;
  const put = (key: string, piece: Piece) => {
    const text = JSON.stringify(piece);
    used.add(key);
    made += 1;
    disk.write(key, text);
    shelf.hold(key, { piece, size: text.length });
  };
  return {
    take: (sources, make) => {
      const key = keyOf(sources);
      const known = shelf.find(key) ?? readPiece<Piece>(disk, key);
      if (!known) {
        const piece = make();
        put(key, piece);
        return piece;
      }
      if (!used.has(key)) found += 1;
      used.add(key);
      shelf.hold(key, known);
      return known.piece;
    },
    has: (sources) => {
      const key = keyOf(sources);
      return shelf.find(key) !== undefined || disk.find(key) !== undefined;
    },
    put: (sources, piece) => put(keyOf(sources), piece),
    settle: () => {
      if (made > 0) disk.sweep(limits.diskBytes, used);
      const tally = { found, made };
      used.clear();
      found = 0;
      made = 0;
      return tally;
    },
  };
}

/** A name for what is made from some sources, of file-name letters. */
export function keyOf(sources: readonly string[]): string {
  return createHash("sha256").update(JSON.stringify(sources)).digest("hex").slice(0, 40);
}

interface Held<Piece> {
  readonly piece: Piece;
  readonly size: number;
}

function readPiece<Piece>(disk: PieceFolder, key: string): Held<Piece> | undefined {
  const text = disk.read(key);
  if (text === undefined) return undefined;
  try {
    return { piece: JSON.parse(text), size: text.length };
  } catch {
    return undefined;
  }
}

/** So many bytes of pieces, the ones held longest ago making room. */
function openShelf<Piece>(limitBytes: number) {
  const held = new Map<string, Held<Piece>>();
  let bytes = 0;
  return {
    find: (key: string) => held.get(key),
    hold: (key: string, piece: Held<Piece>) => {
      if (held.has(key)) return;
      held.set(key, piece);
      bytes += piece.size;
      for (const [oldest, { size }] of held) {
        if (bytes <= limitBytes) return;
        held.delete(oldest);
        bytes -= size;
      }
    },
  };
}
