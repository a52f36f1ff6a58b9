import { buildDataset, type Dataset, type TubeRecord } from "@underchassis/dataset";

type Limits = TubeRecord["limits"];
type Unit = TubeRecord["units"][number];

/** A tube record cut down to what the engine and the checks read. */
function tube(
  name: string,
  heater: [number, number, "direct" | "indirect"],
  limits: Partial<Limits>,
  unit: Partial<Unit>,
): { file: string; record: TubeRecord } {
  const record = {
    schemaVersion: 1,
    id: name.toLowerCase(),
    names: [name],
    title: name,
    heater: { volts: heater[0], amps: heater[1], heating: heater[2], source: "from-memory" },
    limits: { ...limits, source: "from-memory" },
    units: [{ count: 1, source: "from-memory", ...unit }],
  };
  return { file: `${name}.json`, record: record as unknown as TubeRecord };
}

const diode = (perveance: number): Partial<Unit> => ({ kind: "vacuum-diode", parameters: { perveance } });

/** Four tubes and the tables that checks look into; figures as in the shared reference. */
export function smallDataset(): Dataset {
  return buildDataset({
    version: "0.0.0",
    stages: [],
    tubes: [
      tube(
        "5Y3GT",
        [5, 2, "direct"],
        { peakInverseVolts: 1400, dcAmps: 0.125, peakAmps: 0.4, rmsVoltsCapacitorInput: 350, maxInputFarads: 20e-6, minSupplyOhms: 50 },
        diode(0.0003536),
      ),
      tube(
        "6X4",
        [6.3, 0.6, "indirect"],
        { peakInverseVolts: 1250, dcAmps: 0.07, peakAmps: 0.245, maxInputFarads: 10e-6, minSupplyOhms: 525, hotSwitchAmps: 1 },
        diode(0.000678),
      ),
      tube(
        "35W4",
        [35, 0.15, "indirect"],
        { peakInverseVolts: 330, dcAmps: 0.1, peakAmps: 0.6, maxInputFarads: 40e-6, minSupplyOhms: 15 },
        diode(0.00262),
      ),
      tube(
        "6V6GT",
        [6.3, 0.45, "indirect"],
        { plateVolts: 350, screenVolts: 315, plateWatts: 14, screenWatts: 2.2 },
        { kind: "pentode", parameters: { mu: 12.67, ex: 1.31, kg1: 2008, kg2: 4500, kp: 33, kvb: 16.85 } },
      ),
    ],
    cautions: [],
    failureNotes: [],
    sources: [],
    tables: new Map([
      [
        "fuse-melting",
        [
          { speed: "T", body: "5x20", ratedAmps: "0.5", meltingAmpsSquaredSeconds: "2.9", source: "fuse-maker-sheets" },
          { speed: "T", body: "5x20", ratedAmps: "1", meltingAmpsSquaredSeconds: "19.2", source: "fuse-maker-sheets" },
          { speed: "T", body: "5x20", ratedAmps: "2", meltingAmpsSquaredSeconds: "92.7", source: "fuse-maker-sheets" },
        ],
      ],
      [
        "electrolytic-leakage",
        [
          { aboveVolts: "0", toVolts: "100", milliampsPerMicrofarad: "0.01", plusMilliamps: "0.3", source: "jan-c-62" },
          { aboveVolts: "100", toVolts: "250", milliampsPerMicrofarad: "0.02", plusMilliamps: "0.3", source: "jan-c-62" },
          { aboveVolts: "250", toVolts: "350", milliampsPerMicrofarad: "0.025", plusMilliamps: "0.3", source: "jan-c-62" },
          { aboveVolts: "350", toVolts: "500", milliampsPerMicrofarad: "0.04", plusMilliamps: "0.3", source: "jan-c-62" },
        ],
      ],
      [
        "electrolytic-esr",
        [
          { microfarads: "22", ratedVolts: "160", typicalOhms: "3.5", source: "esr-guide" },
          { microfarads: "22", ratedVolts: "250", typicalOhms: "2.9", source: "esr-guide" },
          { microfarads: "47", ratedVolts: "160", typicalOhms: "1.6", source: "esr-guide" },
          { microfarads: "47", ratedVolts: "250", typicalOhms: "1.4", source: "esr-guide" },
        ],
      ],
      [
        "touch-current-limits",
        [
          { standard: "ANSI C101", condition: "two-wire cord-connected and portable three-wire", rmsMilliamps: "0.5", source: "ul-c101" },
          { standard: "IEC 60335-1", condition: "portable class I", rmsMilliamps: "0.75", source: "iec-60335-1" },
          {
            standard: "bench rule",
            condition: "transformerless or two-wire set at the highest line voltage",
            rmsMilliamps: "0.25",
            source: "common-practice",
          },
        ],
      ],
    ]),
  });
}
