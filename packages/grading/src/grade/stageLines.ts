import type { Report, ReportPartLine } from "@underchassis/dataset";
import { stresses, worst } from "../checks/shared/stress.ts";
import { type ChassisModel, type Finding, type Part, SEVERITIES, type Severity } from "../model/index.ts";

type StageLine = Report["stages"][number];

/** Stage by stage: its parts with their lives, and which findings speak of it. Parts of no stage come last, under their own heading. */
export function stageLines(model: ChassisModel, findings: readonly Finding[]): StageLine[] {
  const lines: StageLine[] = model.stages.map((stage) => ({
    id: stage.id,
    title: stage.title,
    template: stage.template.id,
    summary: stage.template.summary,
    ...settingLines(stage),
    parts: [...model.parts.values()].filter((part) => part.stage === stage.id).map((part) => partLine(model, part, findings)),
    findings: indices(findings, (finding) => finding.stage === stage.id),
  }));
  const known = new Set(model.stages.map(({ id }) => id));
  const loose = [...model.parts.values()].filter((part) => part.stage === undefined || !known.has(part.stage));
  const rest = indices(findings, (finding) => finding.stage === undefined || !known.has(finding.stage));
  if (loose.length > 0 || rest.length > 0) {
    lines.push({
      id: "chassis",
      title: model.stages.length === 0 ? "The chassis" : "The rest of the chassis",
      parts: loose.map((part) => partLine(model, part, findings)),
      findings: rest,
    });
  }
  return lines;
}

/** What the stage works at, in the template's order; nothing for a template without settings. */
function settingLines({ template, settings, ownSettings }: ChassisModel["stages"][number]): Pick<StageLine, "settings"> {
  const lines = Object.entries(template.settings ?? {}).flatMap(([name, { meaning, unit }]) => {
    const value = settings[name];
    if (value === undefined) return [];
    const from: "job" | "template" = ownSettings.includes(name) ? "job" : "template";
    return [{ name, meaning, value, unit: unit === "ratio" ? "" : unit, from }];
  });
  return lines.length === 0 ? {} : { settings: lines };
}

function indices(findings: readonly Finding[], wanted: (finding: Finding) => boolean): number[] {
  return findings.flatMap((finding, index) => (wanted(finding) ? [index] : []));
}

function partLine(model: ChassisModel, part: Part, findings: readonly Finding[]): ReportPartLine {
  const state = part.lives.restored;
  const load = stresses(model, "restored").get(part.id);
  const volts = worst(load, "maxVolts")?.maxVolts;
  const watts = worst(load, "watts")?.watts;
  const fromTemplate = part.template !== undefined && (state.main?.from ?? state.ratingsFrom) === "typical";
  return {
    id: part.id,
    name: part.name,
    title: part.title,
    kind: part.kind,
    between: placeOf(part),
    ...part.asWritten,
    ...(fromTemplate ? { typical: true } : {}),
    change: part.change,
    severity: severityOf(part, findings),
    ...(watts === undefined || !["resistor", "potentiometer", "tube"].includes(part.kind) ? {} : { watts }),
    ...(state.ratedWatts === undefined ? {} : { ratedWatts: state.ratedWatts }),
    ...(volts === undefined || !["resistor", "capacitor", "rectifier"].includes(part.kind) ? {} : { maxVolts: volts }),
    ...(state.ratedVolts === undefined ? {} : { ratedVolts: state.ratedVolts }),
  };
}

/** The worst that is said of a part; `unmeasured` when nothing is said and nobody measured it. */
function severityOf(part: Part, findings: readonly Finding[]): Severity {
  if (!part.lives.restored.present) return part.lives.planned.present ? plannedSeverity(part, findings) : "good";
  const own = findings
    .filter((finding) => finding.part === part.id && finding.life !== "planned")
    .map(({ severity }) => SEVERITIES.indexOf(severity));
  if (own.length > 0) return SEVERITIES[Math.min(...own)] ?? "good";
  return part.measured === undefined && part.fittedMeasured === undefined && (part.advice?.measure.length ?? 0) > 0 ? "unmeasured" : "good";
}

function placeOf(part: Part): string {
  const state = part.lives.restored;
  if (state.windings !== undefined) return state.windings.map((winding) => `${winding.id}: ${winding.points.join(" - ")}`).join("; ");
  const pins = Object.entries(state.pins);
  if (pins.length === 2 && state.pins.a !== undefined) return `${state.pins.a} - ${state.pins.b}`;
  const through = pins.flatMap(([pin, point]) => {
    const out = pin.endsWith("-in") ? state.pins[pin.replace(/in$/, "out")] : undefined;
    return out === undefined ? [] : [`${point} -> ${out}`];
  });
  // Conductors that only pass through, as in a cord: where each comes from and goes says it all.
  if (through.length * 2 === pins.length && through.length > 0) return through.join(", ");
  return pins.map(([pin, point]) => `${pin} ${point}`).join(", ");
}

/** A part that is only planned is judged as planned. */
function plannedSeverity(part: Part, findings: readonly Finding[]): Severity {
  const own = findings.filter((finding) => finding.part === part.id).map(({ severity }) => SEVERITIES.indexOf(severity));
  return own.length === 0 ? "good" : (SEVERITIES[Math.min(...own)] ?? "good");
}
