import type { StageTemplate } from "./generated/index.ts";

type SettingUnit = NonNullable<StageTemplate["settings"]>[string]["unit"];

/** Dimension of a stage's setting, by its unit. */
export const SETTING_DIMENSION = {
  V: "voltage",
  A: "current",
  ohm: "resistance",
  F: "capacitance",
  H: "inductance",
  W: "power",
  Hz: "frequency",
  s: "time",
  S: "conductance",
  ratio: "ratio",
} as const satisfies Readonly<Record<SettingUnit, string>>;
