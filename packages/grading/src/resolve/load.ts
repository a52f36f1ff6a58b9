import type { Path } from "../job/loadedJob.ts";
import type { ResolveContext } from "./context.ts";

/** A load as written: "60 mA" draws that at any voltage; "5 kohm" and "60 mA at 250 V" are resistances. */
export function readLoad(context: ResolveContext, text: string | number, path: Path): { amps: number } | { ohms: number } | undefined {
  const marking = context.marking(text, "load", path);
  if (marking === undefined) return undefined;
  if (marking.ohms !== undefined) return { ohms: marking.ohms };
  if (marking.ratedAmps !== undefined && marking.ratedVolts !== undefined) return { ohms: marking.ratedVolts / marking.ratedAmps };
  if (marking.ratedAmps !== undefined) return { amps: marking.ratedAmps };
  if (marking.value !== undefined && marking.dimension === "resistance") return { ohms: marking.value };
  if (marking.value !== undefined) return { amps: marking.value };
  return undefined;
}
