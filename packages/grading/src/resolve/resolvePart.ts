import type { JobFitted, StagePart } from "@underchassis/dataset";
import {
  LIVES,
  type Life,
  type Measured,
  type Meter,
  type Part,
  type PartKind,
  type PartState,
  type Valued,
  type WindingSpec,
} from "../model/index.ts";
import type { ResolveContext } from "./context.ts";
import { LEAK_SPREAD } from "./defaults.ts";
import { resolveMeasured } from "./measured.ts";
import { fittedOf, type PartInput } from "./partInput.ts";
import { type Described, describe } from "./state/describe.ts";
import { fittedWindings, reportMissingPrimary, resolveWinding } from "./state/transformer.ts";

/** Duties of capacitors that are electrolytics where nothing else is written: those of filters and cathodes. common-practice. */
const MICROFARAD_DUTIES = /^(?:filter|reservoir|smoothing|(?:output|upper|lower)-capacitor)|cathode-bypass|electrolytic/;

/** Year that newly fitted parts date from, for the defaults of their markings. */
const NOW = 2020;

/** A part through its lives: as the maker meant it, as found, as restored, as planned. */
export function resolvePart(context: ResolveContext, input: PartInput, meters: ReadonlyMap<string, Meter>): Part | undefined {
  const { written, kind, path, template } = input;
  const fitted = fittedOf(written);
  const inPlace = written.foundMarked !== undefined || written.foundType !== undefined;
  const named = written.marked !== undefined || written.type !== undefined;
  // An optional part that is only fitted was added; a part that a stage cannot do without was there, whatever it was.
  const added =
    !named &&
    fitted !== undefined &&
    !inPlace &&
    (template === undefined || template.optional === true || template.whenAbsent === "joined");
  const marked = written.marked ?? (written.type === undefined ? template?.typical : undefined);
  const type = written.type ?? (written.marked === undefined ? template?.type : undefined);
  const hasOriginal = input.windings.length > 0 || (!added && (named || template !== undefined || fitted === undefined));
  const tolerance = written.tolerance === undefined ? undefined : context.tolerance(written.tolerance, [...path, "tolerance"]);
  const electrolytic = input.polarised || MICROFARAD_DUTIES.test(input.duty ?? "");
  const from: Valued["from"] = written.marked === undefined && written.type === undefined ? "typical" : "marking";
  const before = context.diagnostics.length;
  if (written.removed === true && fitted !== undefined) {
    context.problem([...path, "removed"], "fitted-and-removed", `${input.name} is both taken out and fitted`, {
      expected: `"fitted" alone where another part took its place, "removed" alone where none did`,
    });
  }

  const original = hasOriginal
    ? describe(context, {
        kind,
        text: marked,
        type,
        tolerance,
        from,
        era: context.era,
        electrolytic,
        pins: input.pins,
        path: [...path, written.marked === undefined ? "type" : "marked"],
      })
    : {};
  const replacement =
    fitted !== undefined && (fitted.marked !== undefined || fitted.type !== undefined)
      ? describe(context, {
          kind,
          text: fitted.marked,
          type: fitted.type,
          tolerance: undefined,
          from: "fitted",
          era: NOW,
          electrolytic,
          pins: input.pins,
          path: [...path, "fitted", ...(fitted.type === undefined ? ["marked"] : ["type"])],
        })
      : undefined;
  const inItsPlace = inPlace
    ? describe(context, {
        kind,
        text: written.foundMarked,
        type: written.foundType,
        tolerance: undefined,
        from: "marking",
        era: context.era,
        electrolytic,
        pins: input.pins,
        path: [...path, written.foundType === undefined ? "foundMarked" : "foundType"],
      })
    : original;
  const windings = kind === "transformer" ? resolveWindings(context, input) : undefined;
  const rewound =
    windings === undefined || fitted?.windings === undefined
      ? undefined
      : fittedWindings(context, input.windings, fitted.windings, [...path, "fitted", "windings"]);
  if (original === undefined || inItsPlace === undefined || (kind === "transformer" && windings === undefined)) {
    if (context.diagnostics.length === before) {
      context.problem(path, "value-missing", `nothing says what ${input.name} (${kind}) is`, {
        expected: `"marked", or "type" for tubes and rectifiers`,
      });
    }
    return undefined;
  }
  const measured =
    written.measured === undefined
      ? undefined
      : resolveMeasured(context, kind, written.measured, [...path, "measured"], meters, electrolytic || isElectrolytic(inItsPlace));
  const fittedMeasured =
    fitted?.measured === undefined
      ? undefined
      : resolveMeasured(
          context,
          kind,
          fitted.measured,
          [...path, "fitted", "measured"],
          meters,
          replacement === undefined ? electrolytic || isElectrolytic(inItsPlace) : isElectrolytic(replacement),
        );

  const pins = input.pins;
  const designed: PartState = { ...original, present: hasOriginal, pins, ...(windings === undefined ? {} : { windings }) };
  const found: PartState =
    hasOriginal || inPlace
      ? applyMeasurement({ ...designed, ...inItsPlace, present: true, pins: input.foundPins ?? pins }, kind, measured)
      : designed;
  const base =
    fitted === undefined
      ? found
      : fittedState(designed, found, rewound === undefined ? replacement : { ...replacement, windings: rewound }, input, fittedMeasured);
  const after: PartState = written.removed === true ? { ...found, present: false } : base;
  const planned = fitted?.planned === true;
  const lives: Record<Life, PartState> = { designed, found, restored: planned ? found : after, planned: after };

  return {
    id: input.id,
    name: input.name,
    title: input.title,
    kind,
    ...(input.role === undefined ? {} : { role: input.role }),
    ...(input.duty === undefined ? {} : { duty: input.duty }),
    ...(input.stage === undefined ? {} : { stage: input.stage }),
    ...(input.templateId === undefined ? {} : { template: input.templateId }),
    ...(template === undefined ? {} : { advice: adviceOf(template) }),
    polarised: input.polarised || LIVES.some((life) => lives[life].dielectric === "electrolytic"),
    ...(template?.driven === true ? { driven: true as const } : {}),
    joinedWhenAbsent: template?.whenAbsent === "joined",
    ...optional("positions", { ...template?.positions, ...written.positions }),
    ...optional("presentIn", ("presentIn" in written ? written.presentIn : undefined) ?? template?.presentIn),
    lives,
    ...(measured === undefined ? {} : { measured }),
    ...(fittedMeasured === undefined ? {} : { fittedMeasured }),
    ...(inPlace ? { foundInPlace: [written.foundType, written.foundMarked].filter((text) => text !== undefined).join(" ") } : {}),
    change: changeOf(
      written.removed === true,
      fitted !== undefined,
      planned,
      hasOriginal,
      replacement !== undefined || rewound !== undefined,
    ),
    ...(fitted?.why === undefined ? {} : { changeWhy: fitted.why }),
    asWritten: {
      ...(!hasOriginal || (marked === undefined && type === undefined)
        ? {}
        : { marked: [type, marked].filter((text) => text !== undefined).join(" ") }),
      ...(measured === undefined ? {} : { measured: measured.asWritten }),
      ...(fitted === undefined ? {} : { fitted: fittedText(fitted) }),
    },
    location: context.job.locate(path),
  };
}

function isElectrolytic(described: Described | undefined): boolean {
  return described?.dielectric === "electrolytic";
}

function resolveWindings(context: ResolveContext, input: PartInput): WindingSpec[] | undefined {
  reportMissingPrimary(context, input);
  const windings = input.windings.map((winding) => resolveWinding(context, winding));
  return windings.every((winding) => winding !== undefined) && windings.length > 0 ? windings : undefined;
}

/** The part after the work: a replacement in the right place, or the old part moved or measured again. */
function fittedState(
  designed: PartState,
  found: PartState,
  replacement: Described | undefined,
  input: PartInput,
  measured: Measured | undefined,
): PartState {
  if (replacement === undefined)
    return applyMeasurement({ ...found, present: true, pins: input.fittedPins ?? found.pins }, input.kind, measured);
  const state: PartState = { ...replacement, present: true, pins: input.fittedPins ?? designed.pins };
  if (state.windings === undefined && designed.windings !== undefined) state.windings = designed.windings;
  return applyMeasurement(state, input.kind, measured);
}

/**
 * What was measured out of circuit replaces what is marked. In-circuit readings change nothing here: they are judged
 * against the computed in-circuit value, since parallel paths pull them down.
 */
function applyMeasurement(state: PartState, kind: PartKind, measured: Measured | undefined): PartState {
  if (measured === undefined) return state;
  const sure = { minus: measured.accuracy, plus: measured.accuracy };
  const next: PartState = { ...state };
  if (isGone(kind, measured)) Object.assign(next, { present: false, open: true });
  else if (measured.circuit === "out" && measured.value !== undefined && state.main !== undefined)
    next.main = { value: measured.value, tolerance: sure, from: "measurement" };
  if (measured.dcrOhms !== undefined) next.dcr = { value: measured.dcrOhms, tolerance: sure, from: "measurement" };
  if (measured.esrOhms !== undefined) next.esr = { value: measured.esrOhms, tolerance: { minus: 0.2, plus: 0.2 }, from: "measurement" };
  if (measured.emission !== undefined && measured.emission > 0) next.emission = measured.emission;
  const leakOhms = leakageResistance(state, measured);
  if (leakOhms !== undefined) next.leak = { value: leakOhms, tolerance: { minus: LEAK_SPREAD, plus: LEAK_SPREAD }, from: "measurement" };
  if (measured.condition === "shorted") next.leak = { value: 0.5, tolerance: { minus: 0, plus: 0 }, from: "measurement" };
  return next;
}

/** Burnt open, dead, or of no capacity or emission at all: it leaves a gap. */
function isGone(kind: PartKind, measured: Measured): boolean {
  if (measured.condition === "open" || measured.condition === "dead" || measured.emission === 0) return true;
  return kind === "capacitor" && measured.circuit === "out" && measured.value === 0;
}

function leakageResistance(state: PartState, measured: Measured): number | undefined {
  if (measured.leakOhms !== undefined) return measured.leakOhms;
  const volts = measured.atVolts ?? state.ratedVolts;
  if (measured.leakAmps === undefined || volts === undefined) return undefined;
  return measured.leakAmps > 0 ? Math.abs(volts) / measured.leakAmps : undefined;
}

/** What was fitted, in the job's words; windings by name. */
function fittedText(fitted: JobFitted): string {
  const windings = Object.entries(fitted.windings ?? {}).flatMap(([id, { marked }]) => (marked === undefined ? [] : [`${id} ${marked}`]));
  return (
    [fitted.type, fitted.marked, windings.join(", ")].filter((text) => text !== undefined && text !== "").join(" ") ||
    (fitted.windings === undefined ? "moved" : "rewound")
  );
}

/** A property that is there only when it has something to say. */
function optional<K extends string, V extends object>(key: K, value: V | undefined): Partial<Record<K, V>> {
  return value === undefined || Object.keys(value).length === 0 ? {} : ({ [key]: value } as Record<K, V>);
}

function adviceOf(template: StagePart): NonNullable<Part["advice"]> {
  const { replace, substitute } = template;
  return {
    measure: template.measure ?? [],
    ...(template.ages === undefined ? {} : { ages: template.ages }),
    ...(replace === undefined ? {} : { replace: { ...replace, always: replace.always ?? false } }),
    ...(substitute === undefined ? {} : { substitute }),
  };
}

function changeOf(removed: boolean, fitted: boolean, planned: boolean, hasOriginal: boolean, replaced: boolean): Part["change"] {
  if (removed) return "removed";
  if (!fitted) return "none";
  if (planned) return "planned";
  if (!hasOriginal) return "added";
  return replaced ? "replaced" : "moved";
}
