/** Rules of the radio stages against the formulas of calc, which printed examples hold: pi network, tank, mismatched line, resonance. */
import { type Compared, evaluateFormula, parseFormula } from "@underchassis/calc/expression";
import { detectorTimeConstant, lineStress, piNetwork, plateModulation, resonance, tankCurrent } from "@underchassis/calc/formulas";
import { loadDataset } from "@underchassis/dataset/load";
import { buildModel, templateJob } from "@underchassis/grading";
import { describe, expect, it } from "vitest";
import { stageValues } from "../../packages/grading/src/checks/shared/stageValues.ts";

const dataset = loadDataset();

/** A template at its typical values: what its names stand for, and both sides of each of its rules. */
function typicalOf(id: string) {
  const template = dataset.stages.get(id)!;
  const built = buildModel({ job: { name: `${id}.json`, text: JSON.stringify(templateJob(template)) } }, dataset);
  if (!built.ok) throw new Error(JSON.stringify(built.diagnostics));
  const stage = built.model.stages[0]!;
  const values = stageValues(built.model, stage, "designed", built.model.conditions.get("operating")!, "design");
  return {
    value: (formula: string): number => Number(evaluateFormula(parseFormula(formula), values).value),
    rule(name: string): Compared[] {
      const { formula } = template.requirements.find((requirement) => requirement.id === name)!;
      return [...evaluateFormula(parseFormula(formula), values).comparisons];
    },
  };
}

/** Both are the same arithmetic in another order. */
const NEAR = 1e-9;
const expectNear = (actual: number | undefined, wanted: number) => expect(Math.abs((actual ?? Number.NaN) / wanted - 1)).toBeLessThan(NEAR);

describe("the final with its pi network", () => {
  const final = typicalOf("final-pi-network");
  const watts = final.value("rfWatts");
  const lineOhms = final.value("lineOhms");
  const hertz = final.value("bandLowHertz");
  const q = final.value("loadedQ");
  // Plate load of a class C stage: plate volts over twice the plate current (from-memory, amateur handbooks).
  const plateOhms = final.value('volts("plate") / (2 * plateCurrent.meanAmps)');
  const network = piNetwork.compute({ plateOhms, antennaOhms: lineOhms, q, hertz });

  it("asks for the capacities of the network that calc designs", () => {
    expectNear(final.rule("tuning-range")[0]?.right, network.inputFarads);
    expectNear(final.rule("loading-range")[0]?.right, network.outputFarads);
  });

  it("has the coil of that network, within a tenth", () => {
    expect(final.value("tankCoil.henries") / network.henries).toBeCloseTo(1, 1);
  });

  it("takes the circulating current of the tank", () => {
    expectNear(final.rule("coil-current")[0]?.right, tankCurrent.compute({ watts, loadOhms: plateOhms, q }).rmsAmps);
  });

  it("takes the voltage of the mismatched line, and from it the current of the loading padder", () => {
    const { peakVolts } = lineStress.compute({ watts, lineOhms, swr: final.value("swr") });
    expectNear(final.rule("line-voltage")[0]?.right, 1.5 * peakVolts);
    const amps = (peakVolts / Math.SQRT2) * 2 * Math.PI * hertz * final.value("loadingPadder.farads");
    expectNear(final.rule("loading-padder-current")[0]?.left, amps);
    expectNear(final.rule("loading-contact-current")[0]?.left, amps);
  });
});

describe("tuned circuits resonate where calc says", () => {
  it.each([
    ["rf-amplifier", "band-low", "gridCoil.henries", "tuningCapacitor.farads + trimmer.farads + strayFarads"],
    ["rf-amplifier", "band-high", "gridCoil.henries", "tuningLeastFarads + trimmer.farads + strayFarads"],
    [
      "pentagrid-converter",
      "tracks-low",
      "oscillatorCoil.henries + oscillatorTap.henries",
      "1 / (1 / padder.farads + 1 / (tuningCapacitor.farads + trimmer.farads + strayFarads))",
    ],
    [
      "mixer-local-oscillator",
      "tracks-high",
      "oscillatorCoil.henries + oscillatorTap.henries",
      "tuningLeastFarads + padder.farads + trimmer.farads + strayFarads",
    ],
    ["crystal-oscillator", "tank-low", "tankCoil.henries", "tankCapacitor.farads + strayFarads"],
    [
      "variable-oscillator",
      "reaches-low",
      "coil.henries",
      "tuningCapacitor.farads + padder.farads + trimmer.farads + strayFarads + 1 / (1 / feedbackUpper.farads + 1 / feedbackLower.farads)",
    ],
    ["frequency-multiplier", "tank-range", "tankCoil.henries", "tankCapacitor.farads + strayFarads"],
    ["driver-stage", "tank-high", "tankCoil.henries", "tuningLeastFarads + strayFarads"],
  ])("%s, %s", (id, rule, henries, farads) => {
    const stage = typicalOf(id);
    const { hertz } = resonance.compute({ henries: stage.value(henries), farads: stage.value(farads) });
    expectNear(stage.rule(rule)[0]?.left, hertz);
  });
});

it("the modulated final asks for the audio power, and its bypass for twice the crest, that calc gives", () => {
  const feed = typicalOf("modulated-final-feed");
  const { audioWatts, crestVolts } = plateModulation.compute({
    plateVolts: feed.value('volts("plate-feed")'),
    plateAmps: feed.value("plateCurrent.meanAmps + screenCurrent.meanAmps"),
    modulation: 1,
    carrierWatts: 0,
  });
  expectNear(feed.rule("audio-power")[0]?.right, audioWatts);
  // RF on top of the crest doubles it (from-memory, amateur handbooks).
  expectNear(feed.rule("bypass-voltage")[0]?.right, 2 * crestVolts);
});

it("the detector's filter follows the modulation as far as calc says", () => {
  const detector = typicalOf("diode-detector");
  const { seconds } = detectorTimeConstant.compute({
    ohms: detector.value("detectorLoad.ohms"),
    hertz: detector.value("audioHertz"),
    modulation: detector.value("modulation"),
  });
  expectNear(detector.rule("diagonal-clipping")[0]?.right, seconds);
});
