import type { LinearResponse } from "./linear-response.ts";
import type { PairColumn } from "./plant.ts";
import { reOf } from "./rank-update.ts";

/** The unknowns of a solved changed network: means, spectra and waveforms of any row when they are asked for. */
export class Unknowns {
  private readonly linear: LinearResponse;
  private readonly columns: readonly PairColumn[];
  private readonly gains: readonly Float64Array[];
  private readonly rowGains: Float64Array;
  /** Means of the quiet ports; undefined for what the given currents do without the sources. */
  private readonly quietAmps: Float64Array | undefined;
  private heldMeans: Float64Array | undefined;

  /**
   * @param columns columns of the base that are added up, and the gain of each by place, interleaved
   * @param rowGains gains of the columns of the updated rows, [place][row], interleaved
   */
  constructor(
    linear: LinearResponse,
    columns: readonly PairColumn[],
    gains: readonly Float64Array[],
    rowGains: Float64Array,
    quietAmps: Float64Array | undefined,
  ) {
    this.linear = linear;
    this.columns = columns;
    this.gains = gains;
    this.rowGains = rowGains;
    this.quietAmps = quietAmps;
  }

  /** Mean over the period. */
  mean(row: number): number {
    if (row < 0) return 0;
    this.heldMeans ??= this.allMeans();
    return this.heldMeans[row]!;
  }

  /** Means of all unknowns, the new ones behind those of the base. */
  private allMeans(): Float64Array {
    const { linear, gains, columns, rowGains, quietAmps } = this;
    const { size } = linear.plant.circuit;
    const total = linear.change.size;
    const right = new Float64Array(2 * total);
    const add = ({ plus, minus }: PairColumn, gain: number): void => {
      if (plus >= 0) right[2 * plus] = right[2 * plus]! + gain;
      if (minus >= 0) right[2 * minus] = right[2 * minus]! - gain;
    };
    for (let c = 0; c < columns.length; c++) add(columns[c]!, gains[c]![0]!);
    if (quietAmps !== undefined) for (let b = 0; b < linear.quiet.length; b++) add(linear.quiet[b]!.column, -quietAmps[b]!);
    const solved = new Float64Array(2 * total);
    linear.plant.factors.solve(0, right, solved, 0);
    for (let row = size; row < total; row++) solved[2 * row] = right[2 * row]!;
    const source = quietAmps === undefined ? undefined : linear.sources.get(0)!.unknowns;
    const means = new Float64Array(total);
    for (let row = 0; row < total; row++) means[row] = solved[2 * row]! + (source === undefined ? 0 : source[2 * row]!);
    linear.update.columns.forEach((column, r) => {
      const gain = rowGains[2 * r]!;
      if (gain === 0) return;
      for (let row = 0; row < total; row++) means[row] = means[row]! + gain * reOf(column, size, 0, row);
    });
    return means;
  }

  /** Spectra of the two stages at the harmonics that the given places are for, interleaved, four numbers a harmonic. */
  private spectrum(plus: number, minus: number, places: number): Float64Array {
    const { linear, rowGains, columns, gains, quietAmps } = this;
    const { plant, update } = linear;
    const { size } = plant.circuit;
    const { vectors } = plant.symbol;
    const k = update.rows.length;
    const values = new Float64Array(2 * places);
    for (let side = 0; side < 2; side++) {
      const row = side === 0 ? plus : minus;
      if (row < 0) continue;
      const sign = side === 0 ? 1 : -1;
      for (let c = 0; c < columns.length; c++) addColumn(values, columns[c]!, size, row, sign, gains[c]!, 2, 0);
      for (let r = 0; r < k; r++) addColumn(values, update.columns[r]!, size, row, sign, rowGains, 2 * k, 2 * r);
      if (quietAmps === undefined) continue;
      for (const [place, { unknowns }] of linear.sources) {
        if (place >= places) continue;
        values[2 * place] = values[2 * place]! + sign * unknowns[2 * row]!;
        values[2 * place + 1] = values[2 * place + 1]! + sign * unknowns[2 * row + 1]!;
      }
    }
    values[0] = this.mean(plus) - this.mean(minus);
    values[1] = 0;
    const spectra = new Float64Array(2 * places);
    for (let place = 0; place < places; place++) {
      const xr = values[2 * place]!;
      const xi = values[2 * place + 1]!;
      const out = 4 * (place >> 1);
      const v = 4 * place;
      spectra[out] = spectra[out]! + vectors[v]! * xr - vectors[v + 1]! * xi;
      spectra[out + 1] = spectra[out + 1]! + vectors[v]! * xi + vectors[v + 1]! * xr;
      spectra[out + 2] = spectra[out + 2]! + vectors[v + 2]! * xr - vectors[v + 3]! * xi;
      spectra[out + 3] = spectra[out + 3]! + vectors[v + 2]! * xi + vectors[v + 3]! * xr;
    }
    return spectra;
  }

  /** RMS of what alternates between two rows, up to the fourth harmonic of the highest source; what lies above is small behind a filter. */
  alternating(plus: number, minus = -1): number {
    const { plant, highestOrder } = this.linear;
    const { steps, scheme } = plant.symbol;
    const highest = Math.min(4 * highestOrder, steps / 2);
    const spectra = this.spectrum(plus, minus, 2 * highest + 2);
    let sum = 0;
    for (let h = 1; h <= highest; h++) {
      const first = spectra[4 * h]! ** 2 + spectra[4 * h + 1]! ** 2;
      const second = spectra[4 * h + 2]! ** 2 + spectra[4 * h + 3]! ** 2;
      sum += (2 * h === steps ? 1 : 2) * (scheme.weights[0] * first + scheme.weights[1] * second);
    }
    return Math.sqrt(sum);
  }

  /** Values at both stages of every step. */
  wave(plus: number, minus = -1): Float64Array {
    const out = new Float64Array(2 * this.linear.plant.symbol.steps);
    if (plus >= 0 || minus >= 0) this.linear.waveOf(this.spectrum(plus, minus, this.linear.plant.factors.places), out);
    return out;
  }
}

/** Adds a column's value in a row times its gain at every place. */
function addColumn(
  values: Float64Array,
  { base, plus, minus }: PairColumn,
  size: number,
  row: number,
  sign: number,
  gains: Float64Array,
  stride: number,
  from: number,
): void {
  if (row >= size) {
    const own = sign * ((row === plus ? 1 : 0) - (row === minus ? 1 : 0));
    if (own === 0) return;
    for (let at = 0, g = from; at < values.length; at += 2, g += stride) {
      values[at] = values[at]! + own * gains[g]!;
      values[at + 1] = values[at + 1]! + own * gains[g + 1]!;
    }
    return;
  }
  if (base === undefined) return;
  for (let at = 0, g = from, b = 2 * row; at < values.length; at += 2, g += stride, b += 2 * size) {
    const gr = sign * gains[g]!;
    const gi = sign * gains[g + 1]!;
    values[at] = values[at]! + gr * base[b]! - gi * base[b + 1]!;
    values[at + 1] = values[at + 1]! + gr * base[b + 1]! + gi * base[b]!;
  }
}
