// Generated from schemas/stage.schema.json; run npm run generate. Changes made here are lost.

/**
 * @minItems 2
 * @maxItems 2
 */
export type StagePair = [string, string];

/**
 * A stage of a tube chassis as a sub-circuit: what it is made of, what each part should be, what ages, what must hold.
 */
export interface StageTemplate {
  $schema?: string;
  schemaVersion: 1;
  id: string;
  title: string;
  family: "line" | "supply" | "audio" | "receiving" | "transmitting" | "instrument";
  /**
   * What the stage does and how to recognise it at the bench.
   */
  summary: string;
  terminals: {
    id: string;
    meaning: string;
    /**
     * Point that it is bound to when the job says nothing (chassis, line hot).
     */
    default?: string;
    optional?: boolean;
  }[];
  /**
   * Inner points. In a chassis they are called `stage id:point` unless bound to a point of the chassis, which `bind` allows as for terminals.
   */
  points?: {
    [k: string]: string;
  };
  parts: StagePart[];
  /**
   * What surrounds the stage when it is simulated on its own: sources and loads between its points.
   */
  typical?: {
    parts?: StageSurround[];
    /**
     * Terminal that counts as 0 V when the stage is simulated on its own. Default: the terminal whose default is chassis.
     */
    reference?: string;
    line?: {
      designVolts: string;
      hertz: number;
    };
  };
  expected: StageExpected[];
  requirements: StageRequirement[];
  failureNotes?: string[];
  /**
   * Ids of cautions.
   */
  cautions: string[];
  /**
   * Where the circuit and its typical values come from.
   */
  sources: string[];
}
export interface StagePart {
  role: string;
  /**
   * Role in trade terms: input (reservoir) filter capacitor.
   */
  title: string;
  kind:
    | "resistor"
    | "potentiometer"
    | "capacitor"
    | "inductor"
    | "transformer"
    | "rectifier"
    | "zener"
    | "tube"
    | "regulator-tube"
    | "fuse"
    | "breaker"
    | "switch"
    | "thermistor"
    | "lamp"
    | "cord"
    | "wire"
    | "load"
    | "battery";
  /**
   * Terminals or inner points; the positive (anode) side first.
   */
  between?: StagePair;
  pins?: {
    [k: string]: string;
  };
  windings?: {
    [k: string]: StageWinding;
  };
  /**
   * Value as it would stand on the part: 20 uF 450 V.
   */
  typical?: string;
  /**
   * Typical tube or rectifier type.
   */
  type?: string;
  /**
   * Present only when the job names it.
   */
  optional?: boolean;
  /**
   * What stands between its two points when the chassis has no such part: nothing (open, the default) or a plain wire (joined), so that a series part that is optional or absent does not cut the circuit.
   */
  whenAbsent?: "open" | "joined";
  polarised?: boolean;
  /**
   * What checks look for: the duty that a part has wherever it stands.
   */
  duty?:
    | "filter-input"
    | "filter-later"
    | "decoupling"
    | "coupling"
    | "bypass"
    | "cathode-bypass"
    | "across-line"
    | "line-to-chassis"
    | "tuned"
    | "timing"
    | "surge-limiting"
    | "bleeder"
    | "balancing"
    | "bias"
    | "plate-load"
    | "screen-dropping"
    | "grid-leak"
    | "stopper"
    | "dropping"
    | "divider"
    | "regulator-feed"
    | "line-fuse"
    | "line-switch"
    | "standby-switch"
    | "standby-bypass"
    | "b-plus-fuse";
  positions?: {
    [k: string]: "open" | "closed";
  };
  presentIn?: string[];
  /**
   * What should be measured on this part before power.
   */
  measure?: ("resistance" | "capacitance" | "leakage" | "esr" | "inductance" | "dcr" | "emission" | "continuity" | "insulation")[];
  /**
   * How it fails with the years.
   */
  ages?: string;
  replace?: {
    rule: string;
    /**
     * Replaced on sight, whatever it measures.
     */
    always?: boolean;
    /**
     * Share of the marked value beyond which it is changed.
     */
    driftLimit?: number;
    source: string;
  };
  substitute?: {
    /**
     * Share of the marked value.
     */
    lowest?: number;
    highest?: number;
    text?: string;
    source: string;
  };
  /**
   * Where the typical value comes from.
   */
  source?: string;
}
export interface StageWinding {
  between: string[];
  typical: string;
  /**
   * Typical wire resistance, end to end.
   */
  ohms?: number;
  optional?: boolean;
}
export interface StageSurround {
  kind: "load" | "resistor" | "battery" | "ac-source";
  /**
   * The positive side first. A point that is neither a terminal nor an inner point belongs to the surround alone.
   */
  between: StagePair;
  /**
   * Ohms of a resistor, amperes of a load that draws constant current (or ohms), DC volts of a battery, RMS volts of an AC source at the line's frequency and phase, from its second point to its first.
   */
  value: string;
  presentIn?: string[];
}
export interface StageExpected {
  title: string;
  at?: string;
  to?: string;
  /**
   * For currents.
   */
  part?: string;
  quantity: "dc-volts" | "ac-volts" | "ripple-volts" | "ohms" | "dc-amps" | "ac-amps";
  condition: string;
  /**
   * What the textbook gives, for comparison with the simulation.
   */
  formula?: string;
  /**
   * Published or customary window with the typical values and without the optional parts, SI.
   */
  low?: number;
  high?: number;
  source: string;
}
export interface StageRequirement {
  id: string;
  title: string;
  /**
   * A comparison that must hold: `reservoir.ratedVolts >= 1.1 * reservoir.maxVolts`. Names are role.property; see DEVELOPERS.md.
   */
  formula: string;
  /**
   * Condition whose simulation the properties come from. Default: worst over all powered conditions at high line.
   */
  condition?: string;
  /**
   * What it means when it does not hold.
   */
  otherwise: string;
  severity: "danger" | "replace" | "adjust" | "watch";
  action?: string;
  source: string;
}
