import { FILL } from "./blank.ts";
import type { Plan } from "./skeleton.ts";

/** What a class of tubes is described by. */
interface Shape {
  /** Electrodes that are brought out, besides the heater's two ends. */
  electrodes: readonly string[];
  model: string;
  count?: number;
  /** Parameters that are read off a sheet; those of amplifiers are fitted. */
  parameters?: Readonly<Record<string, string>>;
  limits: readonly string[];
  typical: readonly string[];
}

const AMPLIFIER = {
  limits: ["plateVolts", "plateWatts", "cathodeAmps", "gridOhmsCathodeBias"],
  typical: ["plateVolts", "gridVolts", "plateAmps", "siemens"],
};
const TRIODE: Shape = { ...AMPLIFIER, electrodes: ["plate", "grid", "cathode"], model: "triode" };
const PENTODE: Shape = {
  electrodes: ["plate", "screen", "suppressor", "grid", "cathode"],
  model: "pentode",
  limits: [...AMPLIFIER.limits, "screenVolts", "screenWatts"],
  typical: [...AMPLIFIER.typical, "screenVolts", "screenAmps"],
};
const RECTIFIER: Shape = {
  electrodes: ["plate-1", "plate-2", "cathode"],
  model: "vacuum-diode",
  count: 2,
  parameters: { perveance: "amperes over volts to the power of 1.5, from the published drop" },
  limits: ["peakInverseVolts", "dcAmps", "peakAmps", "rmsVoltsCapacitorInput", "maxInputFarads", "minSupplyOhms"],
  typical: ["dropVolts", "dropAmps"],
};

const SHAPES: Readonly<Record<string, Shape>> = {
  triode: TRIODE,
  "power-triode": TRIODE,
  "twin-triode": { ...TRIODE, electrodes: ["plate-1", "grid-1", "cathode-1", "plate-2", "grid-2", "cathode-2"], count: 2 },
  pentode: PENTODE,
  "remote-cutoff-pentode": PENTODE,
  "power-pentode": PENTODE,
  "beam-power": { ...PENTODE, electrodes: ["plate", "screen", "grid", "cathode and beam-plates"] },
  tetrode: { ...PENTODE, electrodes: ["plate", "screen", "grid", "cathode"] },
  rectifier: RECTIFIER,
  diode: RECTIFIER,
  "gas-rectifier": {
    ...RECTIFIER,
    model: "gas-diode",
    parameters: {
      dropVolts: "volts across the arc at no current",
      ohms: "how the drop grows with the current, ohms: 4 where nothing is known",
    },
  },
  "gas-regulator": {
    electrodes: ["anode", "cathode"],
    model: "gas-regulator",
    parameters: {
      strikeVolts: "volts at which it lights",
      operatingVolts: "volts at no current, from the published point and the slope",
      slopeOhms: "how the voltage grows with the current, ohms",
      extinguishAmps: "amperes below which it goes out",
    },
    limits: ["minRegulatorAmps", "maxRegulatorAmps", "maxShuntFarads", "maxStrikeVolts"],
    typical: ["dropVolts", "dropAmps"],
  },
};

/** Whether the parameters of a class come out of a fit to its published points. */
export const isFitted = (tubeClass: string | undefined): boolean => {
  const model = SHAPES[tubeClass ?? ""]?.model;
  return model === "triode" || model === "pentode";
};

/** What a tube record of a class holds beyond what every one does; nothing for classes that are described in more ways than one. */
export function tubePlan(tubeClass: string | undefined): Plan {
  const shape = SHAPES[tubeClass ?? ""];
  if (shape === undefined) return { include: [], known: {} };
  const { electrodes, model, count, parameters, limits, typical } = shape;
  const functions = [...electrodes, "heater", "heater"];
  return {
    include: [...limits.map((name) => `limits.${name}`), ...typical.map((name) => `typical[].${name}`)],
    known: {
      "base.pins": Object.fromEntries(
        Array.from(functions, (_, index) => [
          String(index + 1),
          `${FILL}function of pin ${index + 1}; one of ${[...new Set(functions)].join(", ")}, none`,
        ]),
      ),
      "units[].kind": model,
      ...(count === undefined ? {} : { "units[].count": count }),
      ...(parameters === undefined
        ? { "units[].source": "fitted-here" }
        : {
            "units[].parameters": Object.fromEntries(
              Object.entries(parameters).map(([name, words]) => [name, `${FILL}${words}; a number, no quotes`]),
            ),
          }),
    },
  };
}
