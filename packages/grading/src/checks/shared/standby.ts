import { switchIsClosed } from "../../compile/presence.ts";
import type { ChassisModel, Condition, Life, Part, PartState, Solved } from "../../model/index.ts";
import { allIn, endsOf, reach } from "./layout.ts";
import { poweredConditions } from "./stress.ts";

/** Below this a point carries no high voltage. IEC 60950-1. */
const HIGH_VOLTS = 60;

const PASSES: ReadonlySet<string> = new Set(["resistor", "inductor", "fuse"]);

/** A switch that stands open in a powered condition with high voltage on one side, at the highest line. SI. */
export interface OpenSwitch {
  part: Part;
  state: PartState;
  condition: Condition;
  /** Side that the supply is on, and the side that it cuts off. */
  supply: string;
  load: string;
  supplyVolts: number;
  loadVolts: number;
  /** Resistors straight across it. */
  bypass: readonly { part: Part; state: PartState }[];
  /** Capacitors between each side's point and a third point. */
  supplyFarads: number;
  loadFarads: number;
}

/** Every switch that cuts high voltage in a powered condition: standby and send-receive switches, not the line switch. */
export function openSwitches(model: ChassisModel, life: Life): OpenSwitch[] {
  return allIn(model, life, "switch").flatMap(({ part, state }) => {
    const ends = endsOf(state);
    if (ends === undefined || part.duty === "line-switch" || part.role === "lineSwitch") return [];
    const found = poweredConditions(model).flatMap((condition): OpenSwitch[] => {
      if (switchIsClosed(part, condition)) return [];
      const solved = model.solve({ life, condition: condition.id, line: "high" });
      if (!solved.ok) return [];
      const [a, b] = ends.map((point) => meanVolts(solved, point));
      if (a === undefined || b === undefined || Math.max(Math.abs(a), Math.abs(b)) < HIGH_VOLTS) return [];
      const [supply, load] = Math.abs(a) >= Math.abs(b) ? ends : ([ends[1], ends[0]] as const);
      const bypass = allIn(model, life, "resistor").filter((placed) => {
        const pins = endsOf(placed.state);
        return pins?.includes(supply) === true && pins.includes(load);
      });
      return [
        {
          part,
          state,
          condition,
          supply,
          load,
          supplyVolts: Math.max(Math.abs(a), Math.abs(b)),
          loadVolts: Math.min(Math.abs(a), Math.abs(b)),
          bypass,
          supplyFarads: capacitance(model, life, supply, load),
          loadFarads: capacitance(model, life, load, supply),
        },
      ];
    });
    const worst = found.reduce<OpenSwitch | undefined>(
      (best, entry) => (best === undefined || entry.supplyVolts > best.supplyVolts ? entry : best),
      undefined,
    );
    return worst === undefined ? [] : [worst];
  });
}

/** Mean voltage of a point, 0 where nothing reaches it in this condition. */
function meanVolts(solved: Extract<Solved, { ok: true }>, point: string): number | undefined {
  const name = solved.compiled.pointOf(point);
  if (name === undefined || name === solved.compiled.network.reference) return 0;
  return solved.steady.points.get(name)?.meanVolts ?? 0;
}

/** Capacitors between one side of the switch, and what resistors and chokes join to it, and elsewhere. */
function capacitance(model: ChassisModel, life: Life, point: string, other: string): number {
  const side = reach(model, life, point, ({ part }) => PASSES.has(part.kind), new Set([other, model.reference]));
  return allIn(model, life, "capacitor").reduce((sum, { state }) => {
    const ends = endsOf(state);
    return ends !== undefined && !ends.includes(other) && ends.filter((end) => side.has(end)).length === 1
      ? sum + (state.main?.value ?? 0)
      : sum;
  }, 0);
}
