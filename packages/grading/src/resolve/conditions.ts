import type { Condition } from "../model/index.ts";
import type { ResolveContext } from "./context.ts";
import { readLoad } from "./load.ts";

type BuiltIn = Condition["like"];

const BUILT_IN: Record<BuiltIn, Condition> = {
  cold: { id: "cold", like: "cold", title: "cold, unplugged", powered: false, tubes: "all", switches: {}, loads: {} },
  "tubes-out": {
    id: "tubes-out",
    like: "tubes-out",
    title: "powered, only rectifiers in",
    powered: true,
    tubes: "rectifiers",
    switches: {},
    loads: {},
  },
  standby: { id: "standby", like: "standby", title: "standby", powered: true, tubes: "all", switches: {}, loads: {} },
  operating: { id: "operating", like: "operating", title: "operating, no signal", powered: true, tubes: "all", switches: {}, loads: {} },
};

/** Heaters in series: with any tube pulled the rectifier tube is dark too. Dry rectifiers still work. */
const STRING_TUBES_OUT: Condition = { ...BUILT_IN["tubes-out"], title: "powered, tubes out", tubes: "none" };

/** The four conditions that always exist, as the job changes them, and the job's own. */
export function resolveConditions(context: ResolveContext): Map<string, Condition> {
  const conditions = new Map<string, Condition>(Object.entries(BUILT_IN));
  if (context.job.job.chassis.isolation === "transformerless") conditions.set("tubes-out", STRING_TUBES_OUT);
  // The job's changes to the four come first, whatever the order in the file: its own conditions start from them.
  const written = Object.entries(context.job.job.conditions ?? {});
  for (const [id, changes] of [...written.filter(([id]) => id in BUILT_IN), ...written.filter(([id]) => !(id in BUILT_IN))]) {
    const path = ["conditions", id];
    const like = changes.like ?? (id in BUILT_IN ? (id as BuiltIn) : "operating");
    const start = conditions.get(like) ?? BUILT_IN.operating;
    const loads: Record<string, { amps: number } | { ohms: number }> = { ...start.loads };
    for (const [name, value] of Object.entries(changes.loads ?? {})) {
      const load = readLoad(context, value, [...path, "loads", name]);
      if (load !== undefined) loads[name] = load;
    }
    const condition: Condition = {
      ...start,
      id,
      like,
      title: changes.title ?? (id === like ? start.title : id),
      powered: changes.powered ?? start.powered,
      tubes: changes.tubes ?? start.tubes,
      switches: { ...start.switches, ...changes.switches },
      loads,
    };
    if (changes.lineVolts !== undefined) {
      const volts = context.quantity(changes.lineVolts, "voltage", [...path, "lineVolts"]);
      if (volts !== undefined) condition.lineVolts = volts;
    }
    conditions.set(id, condition);
  }
  return conditions;
}
