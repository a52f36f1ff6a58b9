import type { TubeRecord } from "@underchassis/dataset";
import { nearestOf } from "@underchassis/source-text";
import type { DeviceLimits, PartState } from "../../model/index.ts";
import type { ResolveContext } from "../context.ts";
import { SELENIUM_KNEE_VOLTS, SELENIUM_PLATE_VOLTS_AT_RATED, SELENIUM_RMS_VOLTS_PER_PLATE, SILICON } from "../defaults.ts";
import type { Described, Description } from "./describe.ts";

type Device = NonNullable<PartState["device"]>;

/** A tube, rectifier, regulator tube or zener diode from its type or marking. */
export function describeDevice(context: ResolveContext, d: Description): Described | undefined {
  if (d.kind === "zener") return describeZener(context, d);
  const named = d.type ?? (d.text === undefined ? undefined : String(d.text));
  if (named === undefined) return undefined;
  const tube = context.dataset.tubes.get(named.trim().toUpperCase());
  if (tube !== undefined) return describeTube(context, d, tube);
  if (d.kind === "rectifier") return describeSolidState(context, d, named);
  const nearest = nearestOf(named.trim().toUpperCase(), [...context.dataset.tubes.keys()]);
  context.problem(d.path, "tube-unknown", `no tube of this type in the dataset`, {
    received: named,
    expected: "a tube type of the dataset",
    ...(nearest === undefined ? {} : { nearest }),
    help: "describe what it draws as a part of kind load instead, or add the type to datasets/tubes",
  });
  return undefined;
}

function describeTube(context: ResolveContext, d: Description, tube: TubeRecord): Described {
  const unit = unitOf(tube, d.pins);
  const described: Described = {
    type: tube.names[0] ?? tube.id,
    limits: limitsOf(tube),
    heater: {
      volts: tube.heater.volts,
      amps: tube.heater.amps,
      direct: tube.heater.heating === "direct",
      ...(tube.heater.parallel === undefined ? {} : { parallel: tube.heater.parallel }),
    },
    ratingsFrom: d.from,
  };
  const device = unit === undefined ? undefined : deviceOf(unit);
  if (device !== undefined) described.device = device;
  else if (d.kind !== "tube")
    context.problem(d.path, "tube-unknown", `${tube.id} is not a ${d.kind}`, { received: d.type ?? String(d.text) });
  return described;
}

/** The unit that a part of this type is: in a triode-pentode the pentode where a screen is wired, else the triode. */
function unitOf(tube: TubeRecord, pins: Description["pins"]): TubeRecord["units"][number] | undefined {
  const kind = pins?.screen === undefined ? "triode" : "pentode";
  return tube.class === "triode-pentode" ? tube.units.find((unit) => unit.kind === kind) : tube.units[0];
}

function deviceOf(unit: TubeRecord["units"][number]): Device | undefined {
  const p = unit.parameters ?? {};
  const source = unit.source ?? "from-memory";
  const spread = unit.spread ?? 0.25;
  const need = (name: string): number => p[name] ?? Number.NaN;
  const vct = p.vct === undefined ? {} : { vct: p.vct };
  const gridOhms = p.gridOhms === undefined ? {} : { gridOhms: p.gridOhms };
  const triode = { mu: need("mu"), ex: need("ex"), kg1: need("kg1"), kp: need("kp"), kvb: need("kvb"), ...vct, ...gridOhms };
  switch (unit.kind) {
    case "triode":
      return { kind: "triode", parameters: triode, spread, source };
    case "pentode":
      return { kind: "pentode", parameters: { ...triode, kg2: need("kg2") }, spread, source };
    case "vacuum-diode":
      return { kind: "vacuum-diode", perveance: need("perveance"), spread: unit.spread ?? 0.15, source };
    case "gas-diode":
      return { kind: "gas-diode", dropVolts: need("dropVolts"), ohms: p.ohms ?? 4, source };
    case "gas-regulator":
      return {
        kind: "gas-regulator",
        strikeVolts: need("strikeVolts"),
        operatingVolts: need("operatingVolts"),
        slopeOhms: p.slopeOhms ?? 100,
        extinguishAmps: p.extinguishAmps ?? 0.002,
        source,
      };
    case "none":
      return undefined;
  }
}

function limitsOf(tube: TubeRecord): DeviceLimits {
  const { note: _note, ...limits } = tube.limits;
  return limits;
}

/** Silicon or selenium: a class of the diodes table (1N4007), or ratings in words ("silicon 1000 V 1 A", "selenium 130 V 100 mA"). */
function describeSolidState(context: ResolveContext, d: Description, named: string): Described | undefined {
  const row = (context.dataset.tables.get("diodes") ?? []).find(
    (candidate) => candidate.class?.toUpperCase() === named.trim().toUpperCase(),
  );
  if (row !== undefined) {
    const limits: DeviceLimits = { source: row.source ?? "common-practice" };
    for (const [column, key] of [
      ["pivVolts", "peakInverseVolts"],
      ["averageAmps", "dcAmps"],
      ["surgeAmps", "surgeAmps"],
    ] as const) {
      const value = Number(row[column]);
      if (row[column] !== undefined && row[column] !== "" && Number.isFinite(value)) limits[key] = value;
    }
    return { type: row.class ?? named, limits, ratingsFrom: d.from, device: { kind: "silicon", ...SILICON, source: "from-memory" } };
  }
  const marking = context.marking(d.text ?? named, "rectifier", d.path);
  if (marking === undefined) return undefined;
  const limits: DeviceLimits = { source: "marking" };
  if (marking.ratedVolts !== undefined) limits.peakInverseVolts = marking.ratedVolts;
  if (marking.ratedAmps !== undefined) limits.dcAmps = marking.ratedAmps;
  const text = `${marking.type ?? ""} ${named}`;
  if (/selenium/i.test(text))
    return {
      marking,
      type: "selenium",
      limits: seleniumLimits(limits, marking.ratedVolts),
      ratingsFrom: d.from,
      device: selenium(marking.ratedVolts ?? 130, marking.ratedAmps ?? 0.1),
    };
  if (/silicon|^\s*(1n|uf|fr|by|ba)\w+/i.test(text))
    return {
      marking,
      type: marking.type ?? "silicon",
      limits,
      ratingsFrom: d.from,
      device: { kind: "silicon", ...SILICON, source: "from-memory" },
    };
  const known = [
    ...context.dataset.tubes.keys(),
    ...(context.dataset.tables.get("diodes") ?? []).map((candidate) => candidate.class ?? ""),
  ];
  const nearest = nearestOf(named.trim().toUpperCase(), known);
  context.problem(d.path, "rectifier-unknown", "this rectifier is neither a tube of the dataset nor a known diode class", {
    received: named,
    expected: 'a tube type (5Y3GT), a diode class (1N4007), or ratings in words ("silicon 1000 V 1 A", "selenium 130 V 100 mA")',
    ...(nearest === undefined ? {} : { nearest }),
  });
  return undefined;
}

/** A stack marked with its RMS input voltage stands 2.83 times that as peak inverse with a capacitor behind it. */
function seleniumLimits(limits: DeviceLimits, ratedRmsVolts: number | undefined): DeviceLimits {
  return ratedRmsVolts === undefined ? limits : { ...limits, peakInverseVolts: 2 * Math.SQRT2 * ratedRmsVolts };
}

function selenium(ratedVolts: number, ratedAmps: number): Device {
  const plates = Math.max(1, Math.ceil(ratedVolts / SELENIUM_RMS_VOLTS_PER_PLATE));
  const ohmsPerPlate = (SELENIUM_PLATE_VOLTS_AT_RATED - SELENIUM_KNEE_VOLTS) / (ratedAmps > 0 ? ratedAmps : 0.1);
  return { kind: "selenium", plates, kneeVoltsPerPlate: SELENIUM_KNEE_VOLTS, ohmsPerPlate, source: "from-memory" };
}

/** "150 V 5 W", "5 % 12 V": the voltage, and what else stands beside it. A type number in front is left alone. */
function describeZener(context: ResolveContext, d: Description): Described | undefined {
  if (d.text === undefined) return undefined;
  const text = String(d.text);
  const piece = (pattern: RegExp): string | undefined => pattern.exec(text)?.[0].trim();
  const volts = context.quantity(piece(/(?<![\w.])[-+]?[\d.,]+\s*k?v(?:olts?)?(?!\w)/i) ?? text, "voltage", d.path);
  if (volts === undefined) return undefined;
  const [watts, percent] = [piece(/(?<![\w.])[\d./]+\s*m?w(?:atts?)?(?!\w)/i), piece(/(?<![\w.])[\d.]+\s*%/)];
  const ratedWatts = watts === undefined ? undefined : context.quantity(watts, "power", d.path);
  const tolerance = d.tolerance ?? (percent === undefined ? undefined : context.tolerance(percent, d.path)) ?? { minus: 0.05, plus: 0.05 };
  return {
    main: { value: Math.abs(volts), tolerance, from: d.from },
    ...(ratedWatts === undefined ? {} : { ratedWatts }),
    ratingsFrom: d.from,
  };
}
