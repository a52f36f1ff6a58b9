import type { Valued, WindingSpec } from "../../model/index.ts";
import type { ResolveContext } from "../context.ts";
import { HV_WINDING_SHARE, LOW_VOLTAGE_WINDING_SHARE, PRIMARY_WINDING_SHARE } from "../defaults.ts";
import type { WindingInput } from "../partInput.ts";

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
  const measured = input.state.measured === undefined ? undefined : context.quantity(input.state.measured, "resistance", [...input.path, "measured"]);
  const openVolts = input.state.openVolts === undefined ? undefined : context.quantity(input.state.openVolts, "voltage", [...input.path, "openVolts"]);
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

function resistance(input: WindingInput, measured: number | undefined, volts: number, amps: number | undefined, marked: number | undefined): [number, Valued["from"]] {
  if (measured !== undefined) return [measured, "measurement"];
  if (marked !== undefined) return [marked, "marking"];
  if (input.typicalOhms !== undefined && input.fromTemplate) return [input.typicalOhms, "typical"];
  const share = /primary/.test(input.id) ? PRIMARY_WINDING_SHARE : volts > 60 ? HV_WINDING_SHARE : LOW_VOLTAGE_WINDING_SHARE;
  // A winding that states no current: taken as one that gives 20 W.
  const current = amps ?? 20 / volts;
  return [(share * volts) / current, "default"];
}
