import { expect, test } from "vitest";
import { bandwidth } from "./bandwidth.ts";
import { capacitiveReactance } from "./capacitiveReactance.ts";
import { decibelSum } from "./decibelSum.ts";
import { decibelsFromRatio } from "./decibelsFromRatio.ts";
import { inductiveReactance } from "./inductiveReactance.ts";
import { lineStress } from "./lineStress.ts";
import { mismatchPower } from "./mismatchPower.ts";
import { piNetwork } from "./piNetwork.ts";
import { qFromBandwidth } from "./qFromBandwidth.ts";
import { quarterWaveInput } from "./quarterWaveInput.ts";
import { quarterWaveTransformer } from "./quarterWaveTransformer.ts";
import { resonance } from "./resonance.ts";
import { resonatingCapacitance } from "./resonatingCapacitance.ts";
import { resonatingInductance } from "./resonatingInductance.ts";
import { seriesImpedance } from "./seriesImpedance.ts";
import { swrFromLoad } from "./swrFromLoad.ts";
import { swrFromPowers } from "./swrFromPowers.ts";
import { tAttenuator } from "./tAttenuator.ts";
import { tankCurrent } from "./tankCurrent.ts";

test("both reactances are equal at resonance, and resonance comes back from either part", () => {
  const { hertz, reactanceOhms } = resonance.compute({ henries: 50e-6, farads: 40e-12 });
  expect(inductiveReactance.compute({ hertz, henries: 50e-6 }).ohms).toBeCloseTo(reactanceOhms, 8);
  expect(capacitiveReactance.compute({ hertz, farads: 40e-12 }).ohms).toBeCloseTo(reactanceOhms, 8);
  expect(resonatingCapacitance.compute({ hertz, henries: 50e-6 }).farads).toBeCloseTo(40e-12, 20);
  expect(resonatingInductance.compute({ hertz, farads: 40e-12 }).henries).toBeCloseTo(50e-6, 14);
});

test("Q and bandwidth are each other's inverse", () => {
  const { bandwidthHertz } = bandwidth.compute({ hertz: 455e3, q: 91 });
  expect(qFromBandwidth.compute({ hertz: 455e3, bandwidthHertz }).q).toBeCloseTo(91, 10);
});

test("reactances that cancel leave the resistance without phase", () => {
  expect(seriesImpedance.compute({ ohms: 75, inductiveOhms: 300, capacitiveOhms: 300 })).toEqual({ impedanceOhms: 75, phase: 0 });
});

/** Input impedance of C1 across L in series with (C2 across R2), by complex arithmetic. */
function piInput(x1: number, x2: number, xl: number, load: number): { real: number; imaginary: number } {
  const parallel = (g: number, b: number): { real: number; imaginary: number } => {
    const size = g ** 2 + b ** 2;
    return { real: g / size, imaginary: -b / size };
  };
  const behind = parallel(1 / load, 1 / x2);
  const series = { real: behind.real, imaginary: behind.imaginary + xl };
  const size = series.real ** 2 + series.imaginary ** 2;
  return parallel(series.real / size, -series.imaginary / size + 1 / x1);
}

test.each([
  [2000, 50, 12],
  [3500, 75, 15],
  [900, 300, 8],
])("a pi network turns %d into %d ohm", (plateOhms, antennaOhms, q) => {
  const net = piNetwork.compute({ plateOhms, antennaOhms, q, hertz: 7e6 });
  const input = piInput(net.inputReactanceOhms, net.outputReactanceOhms, net.coilReactanceOhms, antennaOhms);
  expect(input.real / plateOhms).toBeCloseTo(1, 9);
  expect(input.imaginary / plateOhms).toBeCloseTo(0, 9);
});

test("a Q too low for the ratio is refused", () => {
  expect(() => piNetwork.compute({ plateOhms: 5000, antennaOhms: 50, q: 9, hertz: 7e6 })).toThrow("Q^2 + 1");
});

test("a matched line has no standing wave and no reflection; an SWR comes back from its powers", () => {
  expect(swrFromLoad.compute({ lineOhms: 50, loadOhms: 50 })).toEqual({ swr: 1, reflection: 0 });
  expect(mismatchPower.compute({ forwardWatts: 100, swr: 1 })).toMatchObject({ reflectedWatts: 0, loadWatts: 100 });
  const { reflectedWatts } = mismatchPower.compute({ forwardWatts: 100, swr: 2.7 });
  expect(swrFromPowers.compute({ forwardWatts: 100, reflectedWatts }).swr).toBeCloseTo(2.7, 10);
  expect(() => swrFromPowers.compute({ forwardWatts: 100, reflectedWatts: 100 })).toThrow("must be below forwardWatts");
});

test("stress: voltage maximum and current maximum each carry the whole power", () => {
  const { peakVolts, rmsAmps, highOhms, lowOhms } = lineStress.compute({ watts: 120, lineOhms: 52, swr: 3 });
  expect(peakVolts ** 2 / 2 / highOhms).toBeCloseTo(120, 9);
  expect(rmsAmps ** 2 * lowOhms).toBeCloseTo(120, 9);
  const tank = tankCurrent.compute({ watts: 120, loadOhms: 2000, q: 1 });
  expect((tank.peakVolts / Math.SQRT2) * tank.rmsAmps).toBeCloseTo(120, 9);
});

test("a quarter wave there and back", () => {
  const { lineOhms } = quarterWaveTransformer.compute({ firstOhms: 75, secondOhms: 300 });
  expect(quarterWaveInput.compute({ lineOhms, loadOhms: 300 }).inputOhms).toBeCloseTo(75, 12);
});

test("decibels and ratio are each other's inverse", () => {
  const { decibels } = decibelsFromRatio.compute({ ratio: 37 });
  expect(decibelSum.compute({ decibels: [decibels] }).ratio).toBeCloseTo(37, 10);
  expect(decibelSum.compute({ decibels: [3, -3] })).toEqual({ sum: 0, ratio: 1, loss: 0 });
});

test("an attenuator ended in its impedance shows that impedance and its loss", () => {
  const { seriesOhms, shuntOhms } = tAttenuator.compute({ lineOhms: 600, lossDecibels: 13 });
  const end = seriesOhms + 600;
  const foot = (shuntOhms * end) / (shuntOhms + end);
  expect(seriesOhms + foot).toBeCloseTo(600, 9);
  const voltageRatio = (foot / (seriesOhms + foot)) * (600 / end);
  expect(-20 * Math.log10(voltageRatio)).toBeCloseTo(13, 9);
});
