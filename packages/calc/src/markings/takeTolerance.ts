import { findTolerance } from "../quantities/parseTolerance.ts";
import type { Result, Tolerance } from "../quantities/types.ts";
import { takeAt, unreadable, type Workpiece } from "./workpiece.ts";

/** Takes a tolerance in percent out of a piece; undefined when none is written. Down by 100 % or more, or up by over 1000 %, is a problem. */
export function takeTolerance(piece: Workpiece): Result<Tolerance | undefined> {
  const found = findTolerance(piece.text);
  if (!found) return { ok: true, value: undefined };
  const { minus, plus } = found.tolerance;
  if (!(minus < 1 && plus <= 10)) return unreadable(piece, "gives a tolerance that cannot be meant");
  takeAt(piece, found.offset, found.length);
  return { ok: true, value: found.tolerance };
}
