import type { Life, Part } from "../model/index.ts";
import type { FaultKind } from "./fault.ts";

const WIRING: ReadonlySet<FaultKind> = new Set<FaultKind>(["moved-lead", "bridge", "exchanged", "reversed"]);

const BY_VALUE: Readonly<Record<string, readonly FaultKind[]>> = {
  resistor: ["open", "short", "drift-high", "drift-low", "wrong-value", "exchanged"],
  potentiometer: ["open", "short", "drift-high", "drift-low", "wrong-value", "exchanged"],
  capacitor: ["open", "lost-capacity", "wrong-value", "exchanged"],
  inductor: ["open", "short"],
};

/**
 * What a measurement out of circuit, or of the part that was fitted, says cannot be wrong with a part. A value that was measured
 * wrong is in the network as it is, and no more a suspect than one that was measured right. Where its leads go is another matter.
 */
export function exonerated(part: Part, life: Life): ReadonlySet<FaultKind> {
  const out = new Set<FaultKind>();
  const fitted = life !== "found" && (part.change === "replaced" || part.change === "added");
  const measured = fitted ? part.fittedMeasured : part.measured;
  if (measured === undefined || measured.circuit !== "out") return out;
  const add = (...kinds: readonly FaultKind[]) => {
    for (const kind of kinds) out.add(kind);
  };
  if (measured.value !== undefined) add(...(BY_VALUE[part.kind] ?? []));
  if (measured.dcrOhms !== undefined) add("open", "short");
  if (measured.leakOhms !== undefined || measured.leakAmps !== undefined) add("leaky", "short");
  if (measured.esrOhms !== undefined) add("high-esr", "open");
  if (measured.emission !== undefined) add("dead", "weak");
  if (measured.condition === "good")
    add(
      ...(
        [
          "open",
          "short",
          "drift-high",
          "drift-low",
          "leaky",
          "lost-capacity",
          "high-esr",
          "dead",
          "weak",
          "gassy",
          "electrode-short",
        ] as const
      ).filter((kind) => !WIRING.has(kind)),
    );
  return out;
}
