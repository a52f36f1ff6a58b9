import type { Part, PartState, WindingSpec } from "../model/index.ts";
import type { ElementSink } from "./elements.ts";
import { bulbOf } from "./presence.ts";

/** How far a winding's voltage may be from the heater's, as a share, to be taken as its winding. */
const FIT = 0.15;

/**
 * Loads each heater winding with the heaters of the bulbs that are in. A heater goes to the winding of its voltage (a tapped heater's halves in parallel where that fits),
 * a rectifier's preferably to the one named for it. Heaters that no winding serves (series strings) are not loads here.
 */
export function addHeaters(sink: ElementSink, parts: readonly { part: Part; state: PartState }[], windings: readonly WindingSpec[]): void {
  const served = new Set<string>();
  for (const { part, state } of parts) {
    const { heater } = state;
    const bulb = bulbOf(part.name);
    if (heater === undefined || heater.amps <= 0 || served.has(bulb)) continue;
    const [wiring, winding] = windingFor(part, [heater, ...(heater.parallel === undefined ? [] : [heater.parallel])], windings);
    const [from, to] = [winding?.points[0], winding?.points[winding.points.length - 1]];
    if (wiring === undefined || from === undefined || to === undefined) continue;
    served.add(bulb);
    sink.add(
      { kind: "resistor", id: `${bulb}/heater`, nodes: [sink.point(from), sink.point(to)], ohms: wiring.volts / wiring.amps },
      part.id,
      "heater",
    );
  }
}

type Wiring = { volts: number; amps: number };

/** The first way of wiring a heater that some winding serves, and that winding. */
function windingFor(part: Part, ways: readonly Wiring[], windings: readonly WindingSpec[]): [Wiring, WindingSpec] | [undefined, undefined] {
  for (const way of ways) {
    const fitting = windings.filter(
      (winding) => !/primary/.test(winding.id) && Math.abs(winding.ratedVolts - way.volts) <= FIT * way.volts,
    );
    const own = part.kind === "rectifier" ? fitting.find(({ id }) => /rect/i.test(id)) : undefined;
    const winding = own ?? fitting.find(({ id }) => !/rect/i.test(id)) ?? fitting[0];
    if (winding !== undefined) return [way, winding];
  }
  return [undefined, undefined];
}
