import type { JobWindingState } from "@underchassis/dataset";
import { nearestOf } from "@underchassis/source-text";
import type { Path } from "../../job/loadedJob.ts";
import type { Valued, WindingSpec } from "../../model/index.ts";
import type { ResolveContext } from "../context.ts";
import { HV_WINDING_SHARE, LOW_VOLTAGE_WINDING_SHARE, PRIMARY_WINDING_SHARE } from "../defaults.ts";
import type { PartInput, WindingInput } from "../partInput.ts";

/**
 * A winding from its rating ("325-0-325 V 120 mA") and its measured wire resistance. Without a measurement the template's
 * typical resistance stands in, without that a share of rated volts over rated amperes.
 */
export function resolveWinding(context: ResolveContext, input: WindingInput): WindingSpec | undefined {
  const marking = context.marking(input.marked, "transformer-winding", [...input.path, "marked"]);
  if (marking?.value === undefined) return undefined;
  const centerTapped = input.points.length === 3;
  // A tapped winding may be written a-0-a (value is one side) or end to end.
  const ratedVolts = centerTapped && marking.centerTapped !== true ? marking.value / 2 : marking.value;
  const measured =
    input.state.measured === undefined ? undefined : context.quantity(input.state.measured, "resistance", [...input.path, "measured"]);
  const openVolts =
    input.state.openVolts === undefined ? undefined : context.quantity(input.state.openVolts, "voltage", [...input.path, "openVolts"]);
  const [ohms, ohmsFrom] = resistance(input, measured, ratedVolts * (centerTapped ? 2 : 1), marking.ratedAmps, marking.ohms);
  return {
    id: input.id,
    points: input.points,
    ratedVolts,
    ...(marking.ratedAmps === undefined ? {} : { ratedAmps: marking.ratedAmps }),
    ...(openVolts === undefined ? {} : { openVolts }),
    ohms,
    ohmsFrom,
    centerTapped,
  };
}

/** Short for primary, or another word for the winding on the line. */
const SOUNDS_PRIMARY = /^(?:p|pri|prim|prims|line|mains|input)(?:[-\d]|$)/;

/** A transformer is fed at its primary: one without a winding of that name is a problem, the name that sounds like it the nearest. */
export function reportMissingPrimary(context: ResolveContext, { name, windings, path }: PartInput): void {
  if (windings.length === 0 || windings.some(({ id }) => /primary/.test(id))) return;
  const meant = windings.find(({ id }) => SOUNDS_PRIMARY.test(id)) ?? windings.find(({ id }) => nearestOf(id, ["primary"]) !== undefined);
  context.problem(meant?.path ?? [...path, "windings"], "transformer-primary-missing", `${name} has no winding called primary`, {
    received: windings.map(({ id }) => id).join(", "),
    expected: "a winding called primary, the one that is fed",
    ...(meant === undefined ? {} : { nearest: meant.id }),
  });
}

/** Windings of the transformer that was fitted: what the job says of each, the old one's figures where it says nothing. */
export function fittedWindings(
  context: ResolveContext,
  old: readonly WindingInput[],
  fitted: Readonly<Record<string, JobWindingState>>,
  path: Path,
): WindingSpec[] | undefined {
  for (const id of Object.keys(fitted)) {
    if (old.some((winding) => winding.id === id)) continue;
    context.problem([...path, id], "winding-unknown", `the transformer has no winding "${id}" to replace`, {
      received: id,
      expected: old.map((winding) => winding.id).join(", "),
    });
  }
  const specs = old.flatMap((winding): (WindingSpec | undefined)[] => {
    const own = fitted[winding.id];
    if (own?.absent === true) return [];
    if (own === undefined) return [resolveWinding(context, winding)];
    const at = { ...winding, path: [...path, winding.id] };
    return [
      resolveWinding(
        context,
        own.marked === undefined
          ? { ...at, state: { ...winding.state, ...own } }
          : { ...at, marked: own.marked, fromTemplate: false, typicalOhms: undefined, state: own },
      ),
    ];
  });
  return specs.every((spec) => spec !== undefined) ? specs : undefined;
}

function resistance(
  input: WindingInput,
  measured: number | undefined,
  volts: number,
  amps: number | undefined,
  marked: number | undefined,
): [number, Valued["from"]] {
  if (measured !== undefined) return [measured, "measurement"];
  if (marked !== undefined) return [marked, "marking"];
  if (input.typicalOhms !== undefined && input.fromTemplate) return [input.typicalOhms, "typical"];
  const share = /primary/.test(input.id) ? PRIMARY_WINDING_SHARE : volts > 60 ? HV_WINDING_SHARE : LOW_VOLTAGE_WINDING_SHARE;
  // A winding that states no current: taken as one that gives 20 W.
  const current = amps === undefined || amps <= 0 ? 20 / volts : amps;
  return [(share * volts) / current, "default"];
}
