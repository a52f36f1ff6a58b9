import type { Fourier } from "./fourier.ts";
import type { NetworkChange } from "./network-change.ts";
import { pairSpectrum } from "./pair-spectrum.ts";
import type { FoldedDevice, PairColumn, Plant } from "./plant.ts";
import { imOf, RankUpdate, reOf } from "./rank-update.ts";
import type { SparseSum } from "./sparse-sum.ts";
import { Unknowns } from "./unknowns.ts";

/** One port of a device in the changed network. */
export interface PlacedPort {
  device: FoldedDevice;
  index: number;
  column: PairColumn;
}

/** Alternating current of a quiet port beyond what is folded in, at both stages of every step. */
export interface StirredPort {
  port: PlacedPort;
  amps: Float64Array;
}

/**
 * The linear part of a changed network, devices folded in, as its rectifiers and tubes feel it. Every unknown is what the sources
 * make of it less what the port currents (beyond those folded in) take away.
 */
export class LinearResponse {
  readonly plant: Plant;
  readonly change: NetworkChange;
  readonly update: RankUpdate;
  readonly active: readonly PlacedPort[];
  readonly quiet: readonly PlacedPort[];
  /** Highest harmonic among the sources. */
  readonly highestOrder: number;
  /** Kernel of the active ports without the mean: [port][other][stage][other stage][lag], in ohms. */
  readonly kernel: Float64Array;
  /** Voltages of the active ports with no port current, without the mean: [port][2 step + stage]. */
  readonly open: Float64Array;
  /** At zero frequency: [port][other port] in ohms and open-circuit volts, active ports first. */
  readonly meanOhms: Float64Array;
  readonly meanOpen: Float64Array;
  /** Shifts y of the updated rows for each active port: [place][port][row], interleaved. */
  private readonly portShifts: Float64Array;
  /** The same at zero frequency for all ports: [port][row]. */
  private readonly meanShifts: Float64Array;
  /** What the sources make of the base's unknowns and their shifts, by place. */
  private readonly sourced = new Map<number, { unknowns: Float64Array; shifts: Float64Array }>();
  private readonly fourier: Fourier;
  /** Weights of the two stages of a step in a mean over the period. */
  readonly weights: readonly [number, number];
  private readonly workRe: Float64Array;
  private readonly workIm: Float64Array;

  constructor(plant: Plant, change: NetworkChange, conductances: SparseSum, fourier: Fourier) {
    this.plant = plant;
    this.change = change;
    this.fourier = fourier;
    const { steps, scheme } = plant.symbol;
    this.weights = [scheme.weights[0] / steps, scheme.weights[1] / steps];
    this.workRe = new Float64Array(fourier.size);
    this.workIm = new Float64Array(fourier.size);
    this.update = new RankUpdate(plant, conductances, change.stores, change.size);
    const active: PlacedPort[] = [];
    const quiet: PlacedPort[] = [];
    for (const device of change.devices) {
      for (let index = 0; index < device.plus.length; index++) {
        (device.active ? active : quiet).push({ device, index, column: plant.pair(device.plus[index]!, device.minus[index]!) });
      }
    }
    this.active = active;
    this.quiet = quiet;
    const k = this.update.rows.length;
    const a = active.length;
    const { places } = plant.factors;
    this.portShifts = new Float64Array(2 * k * a * places);
    const held = new Float64Array(2 * k);
    for (let place = 0; place < places; place++) {
      for (let b = 0; b < a; b++) {
        this.update.gather(active[b]!.column, place, held);
        this.update.shift(place, held, this.portShifts, 2 * k * (place * a + b));
      }
    }
    const all = [...active, ...quiet];
    this.meanShifts = new Float64Array(2 * k * all.length);
    all.forEach(({ column }, b) => {
      this.update.gather(column, 0, held);
      this.update.shift(0, held, this.meanShifts, 2 * k * b);
    });
    this.highestOrder = change.harmonics.reduce((most, { order }) => Math.max(most, order), 1);
    this.addSources();
    this.kernel = this.kernelOf();
    this.open = this.openOf();
    const size = plant.circuit.size;
    this.meanOhms = new Float64Array(all.length * all.length);
    this.meanOpen = new Float64Array(all.length);
    const source = this.sourced.get(0)!;
    for (let p = 0; p < all.length; p++) {
      const { plus, minus } = all[p]!.column;
      const across = this.update.columns.map((column) => reOf(column, size, 0, plus) - reOf(column, size, 0, minus));
      for (let b = 0; b < all.length; b++) {
        let ohms = plant.meanOhms(all[p]!.column, all[b]!.column);
        for (let r = 0; r < k; r++) ohms -= across[r]! * this.meanShifts[2 * (k * b + r)]!;
        this.meanOhms[p * all.length + b] = ohms;
      }
      let volts = this.sourceRe(source, plus) - this.sourceRe(source, minus);
      for (let r = 0; r < k; r++) volts -= across[r]! * source.shifts[2 * r]!;
      this.meanOpen[p] = volts;
    }
  }

  private sourceRe(source: { unknowns: Float64Array }, row: number): number {
    return row < 0 ? 0 : source.unknowns[2 * row]!;
  }

  private addSources(): void {
    const { plant, change, update } = this;
    const { size } = plant.circuit;
    const { symbol } = plant;
    const solve = (place: number, right: Float64Array): void => {
      const unknowns = new Float64Array(2 * change.size);
      plant.factors.solve(place, right, unknowns, 0);
      for (let k = 2 * size; k < 2 * change.size; k++) unknowns[k] = right[k]!;
      const values = new Float64Array(2 * update.rows.length);
      update.rows.forEach((row, j) => {
        values[2 * j] = unknowns[2 * row]!;
        values[2 * j + 1] = unknowns[2 * row + 1]!;
      });
      const shifts = new Float64Array(values.length);
      update.shift(place, values, shifts, 0);
      this.sourced.set(place, { unknowns, shifts });
    };
    const right = new Float64Array(2 * change.size);
    for (const [row, value] of change.constant) if (row >= 0) right[2 * row] = right[2 * row]! + value;
    solve(0, right);
    for (const order of new Set(change.harmonics.map((harmonic) => harmonic.order))) {
      // A sine at the stages of a step: share of each eigenvector in exp(i order omega t).
      const turns = [0, 1].map((stage) => (2 * Math.PI * order * symbol.scheme.times[stage]!) / symbol.steps);
      for (let e = 0; e < 2; e++) {
        const place = 2 * order + e;
        let [fr, fi] = [0, 0];
        for (let stage = 0; stage < 2; stage++) {
          const [cr, ci] = [Math.cos(turns[stage]!), Math.sin(turns[stage]!)];
          const at = 4 * place + 2 * stage;
          const [sr, si] = [symbol.shares[at]!, symbol.shares[at + 1]!];
          fr += sr * cr - si * ci;
          fi += sr * ci + si * cr;
        }
        right.fill(0);
        for (const harmonic of change.harmonics) {
          if (harmonic.order !== order || harmonic.row < 0) continue;
          // sine: -i/2 of the rotating pair; cosine: 1/2.
          const [hr, hi] = [harmonic.cosine / 2, -harmonic.sine / 2];
          right[2 * harmonic.row] = right[2 * harmonic.row]! + hr * fr - hi * fi;
          right[2 * harmonic.row + 1] = right[2 * harmonic.row + 1]! + hr * fi + hi * fr;
        }
        solve(place, right);
      }
    }
  }

  private kernelOf(): Float64Array {
    const { plant, update, active, fourier, portShifts } = this;
    const { size } = plant.circuit;
    const { steps, vectors, shares } = plant.symbol;
    const a = active.length;
    const k = update.rows.length;
    const kernel = new Float64Array(a * a * 4 * steps);
    // Two real sequences share a transform: one is its real, the other its imaginary part.
    const re = new Float64Array(steps);
    const im = new Float64Array(steps);
    const spectra = new Float64Array(8 * (steps / 2 + 1));
    for (let p = 0; p < a; p++) {
      const { plus, minus } = active[p]!.column;
      for (let b = 0; b < a; b++) {
        const own = active[b]!.column;
        spectra.fill(0);
        for (let place = 1; place < steps + 2; place++) {
          let zr = reOf(own, size, place, plus) - reOf(own, size, place, minus);
          let zi = imOf(own, size, place, plus) - imOf(own, size, place, minus);
          for (let r = 0; r < k; r++) {
            const column = update.columns[r]!;
            const ur = reOf(column, size, place, plus) - reOf(column, size, place, minus);
            const ui = imOf(column, size, place, plus) - imOf(column, size, place, minus);
            const at = 2 * (k * (place * a + b) + r);
            zr -= ur * portShifts[at]! - ui * portShifts[at + 1]!;
            zi -= ur * portShifts[at + 1]! + ui * portShifts[at]!;
          }
          const out = 8 * (place >> 1);
          for (let i = 0; i < 2; i++) {
            const v = 4 * place + 2 * i;
            const [vr, vi] = [vectors[v]! * zr - vectors[v + 1]! * zi, vectors[v]! * zi + vectors[v + 1]! * zr];
            for (let l = 0; l < 2; l++) {
              const s = 4 * place + 2 * l;
              const at = out + 2 * (2 * i + l);
              spectra[at] = spectra[at]! + vr * shares[s]! - vi * shares[s + 1]!;
              spectra[at + 1] = spectra[at + 1]! + vr * shares[s + 1]! + vi * shares[s]!;
            }
          }
        }
        for (let i = 0; i < 2; i++) {
          pairSpectrum(spectra, 8, 4 * i, 4 * i + 2, steps, re, im);
          fourier.transform(re, im, 1);
          const at = ((p * a + b) * 4 + 2 * i) * steps;
          for (let m = 0; m < steps; m++) {
            kernel[at + m] = re[m]! / steps;
            kernel[at + steps + m] = im[m]! / steps;
          }
        }
      }
    }
    return kernel;
  }

  private openOf(): Float64Array {
    const { plant, active, change } = this;
    const { steps } = plant.symbol;
    const open = new Float64Array(active.length * 2 * steps);
    active.forEach(({ column: { plus, minus } }, p) => {
      for (const order of new Set(change.harmonics.map((harmonic) => harmonic.order))) {
        for (let stage = 0; stage < 2; stage++) {
          let [xr, xi] = [0, 0];
          for (let e = 0; e < 2; e++) {
            const place = 2 * order + e;
            const high = this.sourceAt(place, plus);
            const low = this.sourceAt(place, minus);
            const at = 4 * place + 2 * stage;
            const [vr, vi] = [plant.symbol.vectors[at]!, plant.symbol.vectors[at + 1]!];
            xr += vr * (high[0] - low[0]) - vi * (high[1] - low[1]);
            xi += vr * (high[1] - low[1]) + vi * (high[0] - low[0]);
          }
          for (let m = 0; m < steps; m++) {
            const angle = (2 * Math.PI * order * m) / steps;
            const at = (p * steps + m) * 2 + stage;
            open[at] = open[at]! + 2 * (xr * Math.cos(angle) - xi * Math.sin(angle));
          }
        }
      }
    });
    return open;
  }

  /** What the sources alone make of an unknown at one place. */
  private sourceAt(place: number, row: number): [re: number, im: number] {
    const source = this.sourced.get(place);
    if (source === undefined || row < 0) return [0, 0];
    const { update, plant } = this;
    let re = source.unknowns[2 * row]!;
    let im = source.unknowns[2 * row + 1]!;
    for (let r = 0; r < update.rows.length; r++) {
      const column = update.columns[r]!;
      const [ur, ui] = [reOf(column, plant.circuit.size, place, row), imOf(column, plant.circuit.size, place, row)];
      re -= ur * source.shifts[2 * r]! - ui * source.shifts[2 * r + 1]!;
      im -= ur * source.shifts[2 * r + 1]! + ui * source.shifts[2 * r]!;
    }
    return [re, im];
  }

  /**
   * All there is to tell any unknown from, once the port currents are known.
   *
   * @param activeAmps currents of the active ports beyond those folded in, [port][2 step + stage]
   * @param quietAmps means of those of the quiet ports
   * @param stirred alternating currents of quiet ports beyond those folded in
   */
  settle(activeAmps: Float64Array, quietAmps: Float64Array, stirred: readonly StirredPort[]): Unknowns {
    const { update, active, quiet, meanShifts } = this;
    const k = update.rows.length;
    const columns = active.map(({ column }) => column);
    const gains = active.map((_, p) => this.gainsOf(activeAmps.subarray(p * 2 * this.plant.symbol.steps), true));
    for (const { port, amps } of stirred) {
      columns.push(port.column);
      gains.push(this.gainsOf(amps, false));
    }
    const rowGains = this.rowGains(columns, gains);
    quiet.forEach((_, b) => {
      for (let r = 0; r < k; r++) rowGains[2 * r] = rowGains[2 * r]! + quietAmps[b]! * meanShifts[2 * (k * (active.length + b) + r)]!;
    });
    for (const [place, { shifts }] of this.sourced) {
      for (let r = 0; r < 2 * k; r++) rowGains[2 * k * place + r] = rowGains[2 * k * place + r]! - shifts[r]!;
    }
    return new Unknowns(this, columns, gains, rowGains, quietAmps);
  }

  /** What alternating currents of quiet ports do to the voltages of the active ones: [port][2 step + stage]. */
  stirredOpen(stirred: readonly StirredPort[]): Float64Array {
    const { active, plant } = this;
    const stages = 2 * plant.symbol.steps;
    const open = Float64Array.from(this.open);
    if (stirred.length === 0) return open;
    const columns = stirred.map(({ port }) => port.column);
    const gains = stirred.map(({ amps }) => this.gainsOf(amps, false));
    const unknowns = new Unknowns(this, columns, gains, this.rowGains(columns, gains), undefined);
    active.forEach(({ column }, p) => {
      const wave = unknowns.wave(column.plus, column.minus);
      for (let stage = 0; stage < stages; stage++) open[p * stages + stage] = open[p * stages + stage]! + wave[stage]!;
    });
    return open;
  }

  /** Gains of a port's column at every place for its current at the stages; the mean is left out unless it is asked for. */
  private gainsOf(amps: Float64Array, mean: boolean): Float64Array {
    const { plant, fourier, workRe: re, workIm: im } = this;
    const { steps, shares } = plant.symbol;
    const gains = new Float64Array(2 * plant.factors.places);
    for (let m = 0; m < steps; m++) {
      re[m] = -amps[2 * m]! / steps;
      im[m] = -amps[2 * m + 1]! / steps;
    }
    fourier.transform(re, im, -1);
    for (let h = 0; h <= steps / 2; h++) {
      const back = (steps - h) % steps;
      // Spectra of the two real sequences out of the one of their pair.
      const firstRe = (re[h]! + re[back]!) / 2;
      const firstIm = (im[h]! - im[back]!) / 2;
      const secondRe = (im[h]! + im[back]!) / 2;
      const secondIm = (re[back]! - re[h]!) / 2;
      for (let place = 2 * h; place < 2 * h + 2; place++) {
        const s = 4 * place;
        gains[2 * place] = shares[s]! * firstRe - shares[s + 1]! * firstIm + shares[s + 2]! * secondRe - shares[s + 3]! * secondIm;
        gains[2 * place + 1] = shares[s]! * firstIm + shares[s + 1]! * firstRe + shares[s + 2]! * secondIm + shares[s + 3]! * secondRe;
      }
    }
    if (!mean) gains[0] = 0;
    gains[1] = 0;
    return gains;
  }

  /** Gains of the updated rows' columns that go with gains of other columns: [place][row], interleaved. */
  private rowGains(columns: readonly PairColumn[], gains: readonly Float64Array[]): Float64Array {
    const { update, plant } = this;
    const { places } = plant.factors;
    const { size } = plant.circuit;
    const k = update.rows.length;
    const out = new Float64Array(2 * k * places);
    if (k === 0) return out;
    const held = new Float64Array(2 * k);
    for (let place = 0; place < places; place++) {
      held.fill(0);
      for (let c = 0; c < columns.length; c++) {
        const gr = gains[c]![2 * place]!;
        const gi = gains[c]![2 * place + 1]!;
        const column = columns[c]!;
        for (let r = 0; r < k; r++) {
          const row = update.rows[r]!;
          const xr = reOf(column, size, place, row);
          const xi = imOf(column, size, place, row);
          held[2 * r] = held[2 * r]! + gr * xr - gi * xi;
          held[2 * r + 1] = held[2 * r + 1]! + gr * xi + gi * xr;
        }
      }
      update.shift(place, held, out, 2 * k * place);
    }
    for (let k = 0; k < out.length; k++) out[k] = -out[k]!;
    return out;
  }

  /** What the sources make of the base's unknowns, by place. */
  get sources(): ReadonlyMap<number, { unknowns: Float64Array }> {
    return this.sourced;
  }

  /** Values at the stages of a pair of spectra. */
  waveOf(spectra: Float64Array, out: Float64Array): void {
    const { steps } = this.plant.symbol;
    const { workRe: re, workIm: im } = this;
    pairSpectrum(spectra, 4, 0, 2, steps, re, im);
    this.fourier.transform(re, im, 1);
    for (let m = 0; m < steps; m++) {
      out[2 * m] = re[m]!;
      out[2 * m + 1] = im[m]!;
    }
  }
}
