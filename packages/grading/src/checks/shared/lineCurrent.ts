import { LINE } from "../../compile/compile.ts";
import type { ChassisModel, Life } from "../../model/index.ts";
import { allIn } from "./layout.ts";
import { lineVoltsOf, solveAll } from "./stress.ts";

/** What the set draws from the line when it has settled. SI. */
export interface LineCurrent {
  condition: string;
  lineVolts: number;
  rmsAmps: number;
  peakAmps: number;
  watts: number;
  /** Current of a series heater string that the network does not hold, included above. */
  stringAmps: number;
}

/**
 * Steady current from the line in the condition that draws most. Core losses and magnetising current are not simulated: they
 * add a few per cent. Series heater strings that stand in no network are added: a resistive current I_h beside a current with
 * the power P gives I^2 = I_s^2 + I_h^2 + 2 I_h P / V exactly, since both are taken against the same sine.
 *
 * @returns undefined when the line is not part of the network or a powered condition cannot be solved
 */
export function lineCurrent(model: ChassisModel, life: Life, line: "high" | "actual" | "design" = "high"): LineCurrent | undefined {
  let worst: LineCurrent | undefined;
  const lineVolts = lineVoltsOf(model, line);
  const stringAmps = stringOf(model, life);
  for (const { condition, solved } of solveAll(model, life, line)) {
    if (!solved.ok) return undefined;
    const figures = solved.steady.elements.get(LINE);
    if (figures === undefined) continue;
    const heater = condition.tubes === "all" ? stringAmps : 0;
    const watts = -figures.watts;
    const rmsAmps = Math.sqrt(figures.rmsAmps ** 2 + heater ** 2 + (2 * heater * watts) / lineVolts);
    const peakAmps = Math.max(Math.abs(figures.maxAmps), Math.abs(figures.minAmps)) + Math.SQRT2 * heater;
    if (worst === undefined || rmsAmps > worst.rmsAmps)
      worst = { condition: condition.id, lineVolts, rmsAmps, peakAmps, watts: watts + heater * lineVolts, stringAmps: heater };
  }
  return worst;
}

/** Current of the heater string of a transformerless set, unless the job holds the string as a part. */
function stringOf(model: ChassisModel, life: Life): number {
  if (model.isolation !== "transformerless") return 0;
  const parts = allIn(model, life);
  const modelled = parts.some(
    ({ part }) => (part.kind === "load" || part.kind === "resistor") && /heater|filament|string/i.test(`${part.role ?? ""} ${part.name}`),
  );
  return modelled ? 0 : Math.max(0, ...parts.map(({ state }) => state.heater?.amps ?? 0));
}
