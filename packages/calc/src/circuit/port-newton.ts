import type { Circuit } from "./circuit.ts";
import { type PortScratch, portScratch } from "./devices/port-device.ts";
import { factorizeSmall, solveSmall } from "./small-lu.ts";

/** A port voltage is settled when Newton's last correction is below this many volts plus this share of it. */
const SETTLED_VOLTS = 1e-6;
const SETTLED_SHARE = 1e-9;
/** Factors are kept while no slope has moved by more than this share. */
const REUSE_SHARE = 1e-3;
const PLAIN_PASSES = 40;
const RAMP_PASSES = 25;
const LEAST_RAMP = 1e-6;

/**
 * Newton's method on the port voltages: v = v0 - Z j(v), where j is the device current less that of the lent conductance.
 * Starts from the last solution; when that fails it ramps v0 from a value that has a known solution (source stepping).
 */
export class PortNewton {
  readonly size: number;
  readonly scratch: PortScratch;
  /** Device currents less lent currents at the solution, consistent with the linear network to rounding. */
  readonly netAmps: Float64Array;
  /** d netAmps / d volts at the solution. */
  readonly netSlopes: Float64Array;
  private readonly circuit: Circuit;
  private readonly deviceAt: number[];
  private readonly jacobian: Float64Array;
  private readonly pivots: Int32Array;
  private readonly step: Float64Array;
  private readonly rampFrom: Float64Array;
  private readonly rampNow: Float64Array;
  private readonly held: Float64Array;
  private readonly startFlux: Float64Array;
  private readonly lent: Float64Array;
  /** Places of the slope matrix that a device can fill. */
  private readonly slopePlaces: Int32Array;
  private readonly factoredSlopes: Float64Array;
  private factoredFor: Float64Array | undefined;
  private perSecond = 0;

  constructor(circuit: Circuit) {
    const size = circuit.ports.length;
    this.circuit = circuit;
    this.size = size;
    this.scratch = portScratch(size);
    this.netAmps = new Float64Array(size);
    this.netSlopes = new Float64Array(size * size);
    this.jacobian = new Float64Array(size * size);
    this.pivots = new Int32Array(size);
    this.step = new Float64Array(size);
    this.rampFrom = new Float64Array(size);
    this.rampNow = new Float64Array(size);
    this.held = new Float64Array(size);
    this.startFlux = new Float64Array(size);
    this.lent = Float64Array.from(circuit.ports, (port) => port.lent);
    this.factoredSlopes = new Float64Array(size * size);
    const places: number[] = [];
    for (const device of circuit.devices) {
      const at = circuit.portIndex.get(device.id)!;
      for (let j = 0; j < device.ports.length; j++) for (let c = 0; c < device.ports.length; c++) places.push((at + j) * size + at + c);
    }
    this.slopePlaces = Int32Array.from(places);
    this.deviceAt = circuit.devices.map((device) => circuit.portIndex.get(device.id)!);
  }

  /** Lays down the memory of the flux ports for the solves that follow. */
  setFlux(state: Float64Array, offset: number, perSecond: number): void {
    this.perSecond = perSecond;
    for (let k = 0; k < this.circuit.fluxPorts.length; k++) this.startFlux[this.circuit.fluxPorts[k]!.port] = state[offset + k]!;
  }

  /** Evaluates all devices at the present port voltages. */
  evaluate(): void {
    const { devices } = this.circuit;
    for (let k = 0; k < devices.length; k++) {
      const device = devices[k]!;
      const at = this.deviceAt[k]!;
      if (device.flux === undefined) device.evaluate(this.scratch, at);
      else device.flux.evaluate(this.scratch, at, this.startFlux[at]!, this.perSecond);
    }
  }

  /**
   * Solves for the port voltages, starting from `scratch.volts`.
   *
   * @param impedance Z, row-major, of the reduction in use
   * @param openVolts v0
   * @returns false when neither Newton nor ramping found a solution
   */
  solve(impedance: Float64Array, openVolts: Float64Array): boolean {
    if (this.size === 0) return true;
    const { volts } = this.scratch;
    this.held.set(volts);
    if (this.iterate(impedance, openVolts, PLAIN_PASSES)) return true;
    volts.set(this.held);
    if (this.ramp(impedance, openVolts)) return true;
    volts.fill(0);
    return this.ramp(impedance, openVolts);
  }

  /** v0 for which the present port voltages are the solution: where a ramp may start. */
  private ramp(impedance: Float64Array, openVolts: Float64Array): boolean {
    const { size, rampFrom, rampNow, held } = this;
    const { volts, amps } = this.scratch;
    this.evaluate();
    for (let k = 0; k < size; k++) {
      let sum = volts[k]!;
      for (let j = 0; j < size; j++) sum += impedance[k * size + j]! * (amps[j]! - this.circuit.ports[j]!.lent * volts[j]!);
      rampFrom[k] = sum;
    }
    let done = 0;
    let stride = 0.25;
    while (done < 1) {
      const next = Math.min(1, done + stride);
      for (let k = 0; k < size; k++) rampNow[k] = rampFrom[k]! + next * (openVolts[k]! - rampFrom[k]!);
      held.set(volts);
      if (this.iterate(impedance, rampNow, RAMP_PASSES)) {
        done = next;
        stride *= 2;
      } else {
        volts.set(held);
        stride /= 4;
        if (stride < LEAST_RAMP) return false;
      }
    }
    return true;
  }

  /** Devices, net currents and net slopes at the present port voltages. */
  evaluateNet(): void {
    const { size, netAmps, netSlopes, lent } = this;
    const { volts, amps, slopes } = this.scratch;
    this.evaluate();
    netSlopes.set(slopes);
    for (let k = 0; k < size; k++) {
      netAmps[k] = amps[k]! - lent[k]! * volts[k]!;
      netSlopes[k * size + k] = netSlopes[k * size + k]! - lent[k]!;
    }
  }

  /** Whether the factors at hand still serve: same network, and slopes that have hardly moved. */
  private factorsServe(impedance: Float64Array): boolean {
    if (this.factoredFor !== impedance) return false;
    const { slopes } = this.scratch;
    const { factoredSlopes, slopePlaces } = this;
    for (let k = 0; k < slopePlaces.length; k++) {
      const place = slopePlaces[k]!;
      const slope = slopes[place]!;
      if (Math.abs(slope - factoredSlopes[place]!) > REUSE_SHARE * Math.abs(slope) + 1e-14) return false;
    }
    return true;
  }

  /** Factors I + Z D, D having entries only within each device's own ports. */
  private factor(impedance: Float64Array): boolean {
    const { size, jacobian, netSlopes, slopePlaces } = this;
    jacobian.fill(0);
    for (let k = 0; k < size; k++) jacobian[k * size + k] = 1;
    for (let k = 0; k < slopePlaces.length; k++) {
      const place = slopePlaces[k]!;
      const slope = netSlopes[place]!;
      if (slope === 0) continue;
      const j = (place / size) | 0;
      const column = place - j * size;
      for (let row = 0; row < size; row++) {
        jacobian[row * size + column] = jacobian[row * size + column]! + impedance[row * size + j]! * slope;
      }
    }
    this.factoredSlopes.set(this.scratch.slopes);
    const regular = factorizeSmall(size, jacobian, this.pivots);
    this.factoredFor = regular ? impedance : undefined;
    return regular;
  }

  private iterate(impedance: Float64Array, openVolts: Float64Array, passes: number): boolean {
    const { size, jacobian, step, netAmps, netSlopes, slopePlaces } = this;
    const { volts } = this.scratch;
    for (let pass = 0; pass < passes; pass++) {
      this.evaluateNet();
      for (let row = 0; row < size; row++) {
        const base = row * size;
        let residual = openVolts[row]! - volts[row]!;
        for (let j = 0; j < size; j++) residual -= impedance[base + j]! * netAmps[j]!;
        step[row] = residual;
      }
      if (!this.factorsServe(impedance) && !this.factor(impedance)) return false;
      solveSmall(size, jacobian, this.pivots, step, 1);
      let settled = true;
      for (let k = 0; k < size; k++) {
        const change = step[k]!;
        const size = Math.abs(change);
        if (!(size <= SETTLED_VOLTS + SETTLED_SHARE * Math.abs(volts[k]!))) {
          if (!Number.isFinite(change)) return false;
          settled = false;
        }
        volts[k] = volts[k]! + change;
      }
      if (settled) {
        // The last correction is followed linearly, so that the currents balance to rounding.
        for (let k = 0; k < slopePlaces.length; k++) {
          const place = slopePlaces[k]!;
          const row = (place / size) | 0;
          netAmps[row] = netAmps[row]! + netSlopes[place]! * step[place - row * size]!;
        }
        return true;
      }
    }
    return false;
  }

  /** Takes slopes of net currents as given and factors with them, for `respond`. */
  adopt(netSlopes: Float64Array, impedance: Float64Array): void {
    this.netSlopes.set(netSlopes);
    this.factor(impedance);
    this.factoredFor = undefined;
  }

  /** Linearises at the present port voltages: slopes and factors for `respond`. */
  linearize(impedance: Float64Array): void {
    if (this.size === 0) return;
    this.evaluateNet();
    if (!this.factorsServe(impedance)) this.factor(impedance);
  }

  /**
   * Response of the solution to a small change: overwrites `columns` right sides of dv0 with dv. Uses the factors of the
   * last solve.
   */
  respond(columns: Float64Array, count: number): void {
    if (this.size > 0) solveSmall(this.size, this.jacobian, this.pivots, columns, count);
  }
}
