import type { MarkedKind, Marking, MarkingContext, Result } from "../quantities/types.ts";
import { capacitorMarking } from "./capacitorMarking.ts";
import { fuseMarking } from "./fuseMarking.ts";
import { inductorMarking } from "./inductorMarking.ts";
import { lampMarking } from "./lampMarking.ts";
import { loadMarking } from "./loadMarking.ts";
import { rectifierMarking } from "./rectifierMarking.ts";
import { resistorMarking } from "./resistorMarking.ts";
import { thermistorMarking } from "./thermistorMarking.ts";
import { windingMarking } from "./windingMarking.ts";
import { type Workpiece, workpiece } from "./workpiece.ts";

const readers: Readonly<Record<MarkedKind, (piece: Workpiece, context: MarkingContext) => Result<Marking>>> = {
  resistor: resistorMarking,
  capacitor: capacitorMarking,
  inductor: inductorMarking,
  fuse: fuseMarking,
  "transformer-winding": windingMarking,
  rectifier: rectifierMarking,
  thermistor: thermistorMarking,
  lamp: lampMarking,
  load: loadMarking,
};

/**
 * Reads a marking as it stands on a part of a known kind; SI base units. A tolerance that is not written is the era's default, with
 * `toleranceWritten` false. Never throws: what cannot be read comes back with its place and what was expected. Words that belong
 * to no figure are listed in `notes`. A capacitor of several sections is read by `parseSections`.
 */
export function parseMarking(text: string, kind: MarkedKind, context: MarkingContext = {}): Result<Marking> {
  const piece = workpiece(text, kind);
  return piece.ok ? readers[kind](piece.value, context) : piece;
}
