import { portScratch } from "../devices/port-device.ts";
import { factorizeSmall, solveSmall } from "../small-lu.ts";
import type { LinearResponse } from "./linear-response.ts";
import type { FoldedDevice } from "./plant.ts";

/** Slopes that differ from those folded in by less than this share are left as they are: the next pass makes up for it. */
const SAME_SHARE = 0.02;

/** What the tubes leave of the mean of the network for the rectifiers. */
export interface MeanForRectifiers {
  /** Mean open-circuit voltages of the active ports in volts, and mean volts lost per mean ampere, [port][other]. */
  open: Float64Array;
  ohms: Float64Array;
}

/** Tubes as they are at the means of their port voltages. They hang on the rectifiers through the rectifiers' mean currents. */
export class TubeMeans {
  private readonly linear: LinearResponse;
  private readonly tubes: readonly { device: FoldedDevice; at: number }[];
  /** Currents beyond those folded in: bases + steep * volts, for ports in `bent`; bases for the rest. */
  private readonly bases: Float64Array;
  private readonly steep: Float64Array;
  private bent: number[] = [];
  /** Volts of the bent ports: [port][constant, mean ampere of each active port]. */
  private bentVolts = new Float64Array(0);
  private readonly scratch;

  constructor(linear: LinearResponse) {
    this.linear = linear;
    this.tubes = linear.quiet.flatMap(({ device, index }, at) => (index === 0 ? [{ device, at }] : []));
    const q = linear.quiet.length;
    this.bases = new Float64Array(q);
    this.steep = new Float64Array(q * q);
    const width = this.tubes.reduce((most, { device }) => Math.max(most, device.plus.length), 0);
    this.scratch = portScratch(width);
  }

  /**
   * Takes the tubes as linear at the given means.
   *
   * @param excess mean currents that come of their curvature, by quiet port
   * @returns undefined when the equations are singular
   */
  linearize(volts: Float64Array, excess: Float64Array): MeanForRectifiers | undefined {
    const { linear, bases, steep, scratch } = this;
    const a = linear.active.length;
    const q = linear.quiet.length;
    const all = a + q;
    const { meanOhms, meanOpen } = linear;
    const bent: number[] = [];
    for (const { device, at } of this.tubes) {
      const count = device.plus.length;
      const { fold } = device;
      for (let k = 0; k < count; k++) scratch.volts[k] = volts[at + k]!;
      device.device.evaluate(scratch, 0);
      let largest = 0;
      let wrong = 0;
      for (let j = 0; j < count; j++) {
        for (let c = 0; c < count; c++) {
          const slope = scratch.slopes[j * scratch.width + c]!;
          largest = Math.max(largest, Math.abs(slope));
          wrong = Math.max(wrong, Math.abs(slope - fold[j * count + c]!));
        }
      }
      const keeps = wrong <= SAME_SHARE * largest;
      for (let j = 0; j < count; j++) {
        let base = scratch.amps[j]! + excess[at + j]!;
        for (let c = 0; c < count; c++) {
          const slope = keeps ? fold[j * count + c]! : scratch.slopes[j * scratch.width + c]!;
          base -= slope * volts[at + c]!;
          steep[(at + j) * q + at + c] = slope - fold[j * count + c]!;
        }
        bases[at + j] = base;
        if (!keeps) bent.push(at + j);
      }
    }
    this.bent = bent;
    const width = a + 1;
    const b = bent.length;
    // Bent ports: v = open - Zqa j - Zqq (bases + steep v).
    const right = new Float64Array(b * width);
    const matrix = new Float64Array(b * b);
    for (let k = 0; k < b; k++) {
      const row = (a + bent[k]!) * all;
      let own = meanOpen[a + bent[k]!]!;
      for (let j = 0; j < q; j++) own -= meanOhms[row + a + j]! * bases[j]!;
      right[k * width] = own;
      for (let p = 0; p < a; p++) right[k * width + 1 + p] = -meanOhms[row + p]!;
      for (let c = 0; c < b; c++) {
        let sum = k === c ? 1 : 0;
        for (let j = 0; j < b; j++) {
          const slope = steep[bent[j]! * q + bent[c]!]!;
          if (slope !== 0) sum += meanOhms[row + a + bent[j]!]! * slope;
        }
        matrix[k * b + c] = sum;
      }
    }
    if (b > 0) {
      const pivots = new Int32Array(b);
      if (!factorizeSmall(b, matrix, pivots)) return undefined;
      solveSmall(b, matrix, pivots, right, width);
    }
    this.bentVolts = right;
    const open = meanOpen.slice(0, a);
    const ohms = new Float64Array(a * a);
    for (let p = 0; p < a; p++) {
      for (let c = 0; c < a; c++) ohms[p * a + c] = meanOhms[p * all + c]!;
      for (let j = 0; j < q; j++) open[p] = open[p]! - meanOhms[p * all + a + j]! * bases[j]!;
    }
    for (let j = 0; j < b; j++) {
      for (let c = 0; c < b; c++) {
        const slope = steep[bent[j]! * q + bent[c]!]!;
        if (slope === 0) continue;
        for (let p = 0; p < a; p++) {
          const gain = meanOhms[p * all + a + bent[j]!]! * slope;
          open[p] = open[p]! - gain * right[c * width]!;
          for (let other = 0; other < a; other++) ohms[p * a + other] = ohms[p * a + other]! + gain * right[c * width + 1 + other]!;
        }
      }
    }
    return { open, ohms };
  }

  /** Currents of the quiet ports beyond those folded in, and their voltages, for mean currents of the active ports. */
  follow(activeMeans: Float64Array, volts: Float64Array): Float64Array {
    const { linear, bases, steep, bent, bentVolts } = this;
    const a = linear.active.length;
    const q = linear.quiet.length;
    const all = a + q;
    const amps = Float64Array.from(bases);
    const width = a + 1;
    for (let c = 0; c < bent.length; c++) {
      let value = bentVolts[c * width]!;
      for (let p = 0; p < a; p++) value += bentVolts[c * width + 1 + p]! * activeMeans[p]!;
      for (let j = 0; j < bent.length; j++) amps[bent[j]!] = amps[bent[j]!]! + steep[bent[j]! * q + bent[c]!]! * value;
    }
    for (let k = 0; k < q; k++) {
      const row = (a + k) * all;
      let value = linear.meanOpen[a + k]!;
      for (let p = 0; p < a; p++) value -= linear.meanOhms[row + p]! * activeMeans[p]!;
      for (let j = 0; j < q; j++) value -= linear.meanOhms[row + a + j]! * amps[j]!;
      volts[k] = value;
    }
    return amps;
  }
}
