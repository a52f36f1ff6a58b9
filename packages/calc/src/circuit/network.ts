/**
 * What a circuit is to the engine: elements between named points. Plain data, SI units, no behaviour.
 *
 * Signs: a two-lead element's voltage is v(nodes[0]) - v(nodes[1]); its current flows from nodes[0] through the
 * element to nodes[1]. A source that delivers power therefore has a negative dissipation.
 */

/** Two points, by name. For a polarised element the first is the positive (anode) side. */
export type Pair = readonly [string, string];

export interface Resistor {
  kind: "resistor";
  id: string;
  nodes: Pair;
  ohms: number;
}

/** A capacitor with its two imperfections; `leakOhms` lies across the ideal capacitor, `esrOhms` in series with both. */
export interface Capacitor {
  kind: "capacitor";
  id: string;
  nodes: Pair;
  farads: number;
  esrOhms?: number;
  leakOhms?: number;
}

/**
 * A coil or choke. `swing` makes the inductance fall with current, as in a choke without much gap:
 * L(i) = residual + (henries - residual) / (1 + (i / halfAmps)^2).
 */
export interface Inductor {
  kind: "inductor";
  id: string;
  nodes: Pair;
  henries: number;
  dcrOhms?: number;
  swing?: { residualHenries: number; halfAmps: number };
}

/** One winding: its two ends (start first, dots at the start), its open-circuit share, its wire resistance. */
export interface Winding {
  id: string;
  nodes: Pair;
  /** Relative number of turns; the open-circuit voltages of the windings are in this ratio. */
  turns: number;
  ohms: number;
}

/**
 * Windings on one core. The coupling is perfect; regulation comes from the winding resistances.
 * `magnetizingHenries`, when given, lies across the first winding's ideal part; without it the core takes no current.
 */
export interface Transformer {
  kind: "transformer";
  id: string;
  windings: readonly Winding[];
  magnetizingHenries?: number;
}

/** v = dcVolts + sqrt(2) * rmsVolts * sin(2*pi*hertz*t + phaseRadians). */
export interface VoltageSource {
  kind: "voltage-source";
  id: string;
  nodes: Pair;
  dcVolts?: number;
  rmsVolts?: number;
  hertz?: number;
  phaseRadians?: number;
}

/** A constant current from nodes[0] through the element to nodes[1]: a load that draws `amps` at any voltage. */
export interface CurrentSource {
  kind: "current-source";
  id: string;
  nodes: Pair;
  amps: number;
}

/** A closed switch is its contact resistance; an open one is not there at all. */
export interface Switch {
  kind: "switch";
  id: string;
  nodes: Pair;
  closed: boolean;
  contactOhms?: number;
}

/**
 * A wire of tungsten or of fuse alloy: resistance rises with its temperature, which follows the RMS current slowly.
 * R(I) = coldOhms + (ratedOhms - coldOhms) * (I_rms / ratedAmps)^exponent (exponent 1.2 for a lamp unless given).
 */
export interface Filament {
  kind: "filament";
  id: string;
  nodes: Pair;
  coldOhms: number;
  ratedOhms: number;
  ratedAmps: number;
  exponent?: number;
}

/** Semiconductor diode: i = is*(exp(v/(n*Vt)) - 1), with `ohms` in series and, when given, `reverseOhms` across it. */
export interface Diode {
  kind: "diode";
  id: string;
  nodes: Pair;
  saturationAmps: number;
  emission: number;
  ohms: number;
  reverseOhms?: number;
}

/** A stack of selenium plates: `plates` junctions in series, each with a knee and a slope; aged ones have more slope. */
export interface Selenium {
  kind: "selenium";
  id: string;
  nodes: Pair;
  plates: number;
  kneeVoltsPerPlate: number;
  ohmsPerPlate: number;
  reverseOhms?: number;
}

/** Vacuum diode: i = perveance * v^1.5 for v > 0 (amperes, volts). */
export interface VacuumDiode {
  kind: "vacuum-diode";
  id: string;
  nodes: Pair;
  perveance: number;
}

/** Mercury-vapour or gas-filled rectifier: a nearly constant drop once it conducts. */
export interface GasDiode {
  kind: "gas-diode";
  id: string;
  nodes: Pair;
  dropVolts: number;
  ohms: number;
}

/**
 * Gas regulator tube, nodes = [anode, cathode]. Dark below `strikeVolts`; lit, v = operatingVolts + slopeOhms * i.
 * It goes out below `extinguishAmps`. Limits are judged by the caller.
 */
export interface GasRegulator {
  kind: "gas-regulator";
  id: string;
  nodes: Pair;
  strikeVolts: number;
  operatingVolts: number;
  slopeOhms: number;
  extinguishAmps: number;
}

/** Zener diode, nodes = [anode, cathode]: forward a diode, reverse a knee at `zenerVolts` with `slopeOhms`. */
export interface Zener {
  kind: "zener";
  id: string;
  nodes: Pair;
  zenerVolts: number;
  slopeOhms: number;
}

/**
 * Negative-temperature-coefficient inrush limiter.
 * R(T) = r25Ohms * exp(beta*(1/T - 1/298.15)); dissipation = deltaWattsPerKelvin*(T - ambient), thermal time constant tauSeconds.
 */
export interface Thermistor {
  kind: "thermistor";
  id: string;
  nodes: Pair;
  r25Ohms: number;
  betaKelvin: number;
  deltaWattsPerKelvin: number;
  tauSeconds: number;
  ambientKelvin?: number;
}

/** Parameters of the published phenomenological triode equation (Koren, Glass Audio 8(5), 1996). */
export interface TriodeParameters {
  mu: number;
  ex: number;
  kg1: number;
  kp: number;
  kvb: number;
  vct?: number;
  /** Grid current above about 0 V: a diode in series with this resistance. */
  gridOhms?: number;
}

export interface Triode {
  kind: "triode";
  id: string;
  nodes: { plate: string; grid: string; cathode: string };
  parameters: TriodeParameters;
  /** Scales plate current: 1 as published, 0.5 a weak tube. */
  emission?: number;
}

/** As TriodeParameters, for a pentode or beam tube; kg2 gives the screen current. */
export interface PentodeParameters {
  mu: number;
  ex: number;
  kg1: number;
  kg2: number;
  kp: number;
  kvb: number;
  vct?: number;
  gridOhms?: number;
}

export interface Pentode {
  kind: "pentode";
  id: string;
  nodes: { plate: string; screen: string; grid: string; cathode: string };
  parameters: PentodeParameters;
  emission?: number;
}

/** A voltmeter: its input resistance between two points. */
export interface Voltmeter {
  kind: "voltmeter";
  id: string;
  nodes: Pair;
  ohms: number;
}

export type Element =
  | Resistor
  | Capacitor
  | Inductor
  | Transformer
  | VoltageSource
  | CurrentSource
  | Switch
  | Filament
  | Diode
  | Selenium
  | VacuumDiode
  | GasDiode
  | GasRegulator
  | Zener
  | Thermistor
  | Triode
  | Pentode
  | Voltmeter;

export type ElementKind = Element["kind"];

/** A circuit: its elements and the point that counts as 0 V. */
export interface Network {
  elements: readonly Element[];
  reference: string;
}
