import type { MarkedKind, Tolerance } from "@underchassis/calc";
import type { Path } from "../../job/loadedJob.ts";
import type { PartKind, PartState, Valued } from "../../model/index.ts";
import type { ResolveContext } from "../context.ts";
import { CHOKE_OHMS_PER_HENRY, DEFAULT_TOLERANCE, FUSE_DROP_VOLTS, WINDING_GUESS } from "../defaults.ts";
import { readLoad } from "../load.ts";
import { describeDevice } from "./device.ts";

/** What one life of a part is described by. */
export interface Description {
  kind: PartKind;
  text: string | number | undefined;
  type: string | undefined;
  tolerance: Tolerance | undefined;
  from: Valued["from"];
  /** Year that the marking dates from. */
  era: number | undefined;
  electrolytic: boolean;
  /** What it is wired by, where that decides which unit of a bulb it is. */
  pins?: Readonly<Record<string, string>>;
  path: Path;
}

export type Described = Omit<PartState, "present" | "pins">;

const MARKED_AS: Partial<Record<PartKind, MarkedKind>> = {
  resistor: "resistor",
  potentiometer: "resistor",
  capacitor: "capacitor",
  inductor: "inductor",
  fuse: "fuse",
  breaker: "fuse",
  thermistor: "thermistor",
  lamp: "lamp",
};

/** Reads what a part is from its marking and type. Undefined when it cannot be read (reported) or nothing says. */
export function describe(context: ResolveContext, d: Description): Described | undefined {
  if (d.kind === "rectifier" || d.kind === "tube" || d.kind === "regulator-tube" || d.kind === "zener") return describeDevice(context, d);
  if (d.kind === "cord")
    return { earthed: d.text !== undefined && /\b(3|three)[\s-]*(wire|conductor|core|pin|prong)|grounded|earthed/i.test(String(d.text)) };
  if (d.kind === "switch") return describeSwitch(context, d);
  if (d.kind === "wire" || d.kind === "transformer") return {};
  if (d.text === undefined) return undefined;
  if (d.kind === "load") {
    const load = readLoad(context, d.text, d.path);
    if (load === undefined) return undefined;
    const ratedVolts = context.marking(d.text, "load", d.path)?.ratedVolts;
    return { load, ...(ratedVolts === undefined ? {} : { ratedVolts }) };
  }
  if (d.kind === "battery") {
    const volts = context.quantity(d.text, "voltage", d.path);
    return volts === undefined
      ? undefined
      : { main: { value: volts, tolerance: d.tolerance ?? { minus: 0.05, plus: 0.05 }, from: d.from } };
  }
  return describeMarked(context, d, d.text);
}

function describeMarked(context: ResolveContext, d: Description, text: string | number): Described | undefined {
  const markedAs = MARKED_AS[d.kind];
  if (markedAs === undefined) return undefined;
  const marking = context.marking(text, markedAs, d.path, {
    ...(d.era === undefined ? {} : { era: d.era }),
    ...(d.electrolytic ? { electrolytic: true } : {}),
  });
  if (marking === undefined) return undefined;
  const value = marking.value ?? (d.kind === "thermistor" ? marking.ohms : undefined);
  if (value === undefined && d.kind !== "lamp") {
    context.problem(d.path, "value-missing", `no value in what is marked on the ${d.kind}`, { received: String(text) });
    return undefined;
  }
  const described: Described = { marking, ratingsFrom: d.from };
  if (value !== undefined) described.main = { value, tolerance: d.tolerance ?? marking.tolerance ?? DEFAULT_TOLERANCE, from: d.from };
  for (const key of ["ratedVolts", "ratedVoltsKind", "ratedWatts", "ratedAmps", "joules", "safetyClass", "dielectric", "speed"] as const) {
    const known = marking[key];
    if (known !== undefined) Object.assign(described, { [key]: known });
  }
  if (d.kind === "inductor" && described.main !== undefined) {
    described.dcr =
      marking.ohms === undefined
        ? { value: Math.max(0.1, CHOKE_OHMS_PER_HENRY * described.main.value), tolerance: WINDING_GUESS, from: "default" }
        : { value: marking.ohms, tolerance: { minus: 0.1, plus: 0.1 }, from: d.from };
  }
  if ((d.kind === "fuse" || d.kind === "breaker") && described.main !== undefined) {
    described.ratedAmps = described.main.value;
    described.dcr = { value: FUSE_DROP_VOLTS / described.main.value, tolerance: { minus: 0.5, plus: 0.5 }, from: "default" };
  }
  return described;
}

/** A switch's marking is its contact rating, when anything: "3 A 250 V". */
function describeSwitch(context: ResolveContext, d: Description): Described {
  if (d.text === undefined) return {};
  const marking = context.marking(d.text, "fuse", d.path);
  if (marking?.value === undefined) return {};
  return {
    marking,
    ratedAmps: marking.value,
    ratingsFrom: d.from,
    ...(marking.ratedVolts === undefined ? {} : { ratedVolts: marking.ratedVolts }),
  };
}
