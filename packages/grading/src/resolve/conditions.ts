import type { Condition, Part } from "../model/index.ts";
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

/**
 * Heaters in series: with the tubes out a rectifier tube is dark too, and nothing has power. Dry rectifiers feed B+ all the same, and
 * what the job itself says of the condition stands.
 */
export function withoutDarkRectifier(
  context: ResolveContext,
  conditions: ReadonlyMap<string, Condition>,
  parts: Iterable<Part>,
): Map<string, Condition> {
  const result = new Map(conditions);
  const tubesOut = result.get("tubes-out");
  const { job } = context.job;
  const dark = [...parts].some(({ kind, lives }) => kind === "rectifier" && lives.restored.heater !== undefined);
  if (tubesOut !== undefined && job.chassis.isolation === "transformerless" && dark && job.conditions?.["tubes-out"] === undefined)
    result.set("tubes-out", { ...tubesOut, title: "tubes out: the heaters in series are open", powered: false });
  return result;
}

/** The four conditions that always exist, as the job changes them, and the job's own. */
export function resolveConditions(context: ResolveContext): Map<string, Condition> {
  const conditions = new Map<string, Condition>(Object.entries(BUILT_IN));
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
