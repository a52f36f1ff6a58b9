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
  /**
   * Id of the template: the file's name.
   */
  id: string;
  /**
   * What the trade calls the stage.
   */
  title: string;
  /**
   * The folder that it lies in: what the stage serves.
   */
  family: "line" | "supply" | "audio" | "receiving" | "transmitting" | "instrument";
  /**
   * What the stage does and how to recognise it at the bench.
   */
  summary: string;
  /**
   * Where the stage meets the chassis.
   */
  terminals: {
    /**
     * Name of the terminal, which jobs bind to a point of their chassis: b-plus, return.
     */
    id: string;
    /**
     * Where the stage meets the chassis here.
     */
    meaning: string;
    /**
     * Point that it is bound to when the job says nothing (chassis, line hot).
     */
    default?: string;
    /**
     * A job may leave it unbound.
     */
    optional?: boolean;
  }[];
  /**
   * Inner points. In a chassis they are called `stage id:point` unless bound to a point of the chassis, which `bind` allows as for terminals.
   */
  points?: {
    [k: string]: string;
  };
  /**
   * What the stage works at and no part says: ends of a band, power, load, standing-wave ratio. Formulas call a setting by its name alone, and a job may give its own value.
   */
  settings?: {
    [k: string]: StageSetting;
  };
  /**
   * What the stage consists of.
   */
  parts: StagePart[];
  /**
   * What surrounds the stage when it is simulated on its own: sources and loads between its points.
   */
  typical?: {
    /**
     * Sources and loads around the stage, so that it can be simulated alone.
     */
    parts?: StageSurround[];
    /**
     * Terminal that counts as 0 V when the stage is simulated on its own. Default: the terminal whose default is chassis.
     */
    reference?: string;
    /**
     * Line that the figures are given for.
     */
    line?: {
      /**
       * Line voltage: 117 V.
       */
      designVolts: string;
      /**
       * Line frequency: 50 or 60.
       */
      hertz: number;
    };
  };
  /**
   * What a meter shows when all is well.
   */
  expected: StageExpected[];
  /**
   * What must hold of the parts together.
   */
  requirements: StageRequirement[];
  /**
   * Ids of failure notes (datasets/failure-notes) that belong to this stage.
   */
  failureNotes?: string[];
  /**
   * Ids of cautions (datasets/cautions): high-voltage-stored-charge, one-hand-rule.
   */
  cautions: string[];
  /**
   * Where the circuit and its typical values come from.
   */
  sources: string[];
}
export interface StageSetting {
  /**
   * What it is, in trade terms: lowest frequency of the band.
   */
  meaning: string;
  /**
   * Its unit; the name ends in it (bandLowHertz, lineOhms, riseSeconds), a ratio's in none of them.
   */
  unit: "V" | "A" | "ohm" | "F" | "H" | "W" | "Hz" | "s" | "S" | "ratio";
  /**
   * Value as people write it: 3.5 MHz, 52 W, 2.
   */
  typical: string;
  /**
   * Where the typical value comes from: an id of datasets/sources.csv.
   */
  source: string;
}
export interface StagePart {
  /**
   * Role as one word, small letter first: reservoir, plateLoad.
   */
  role: string;
  /**
   * Role in trade terms: input (reservoir) filter capacitor.
   */
  title: string;
  /**
   * What the part is.
   */
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
  /**
   * Tubes: the point that each electrode is wired to.
   */
  pins?: {
    [k: string]: string;
  };
  /**
   * Transformers: each winding with its leads and voltage.
   */
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
   * A tube whose mean currents follow from drive or oscillation, not from its direct voltages: loads of the template draw them, and its curves are not simulated.
   */
  driven?: boolean;
  /**
   * Present only when the job names it.
   */
  optional?: boolean;
  /**
   * What stands between its two points when the chassis has no such part: nothing (open, the default) or a plain wire (joined), so that a series part that is optional or absent does not cut the circuit.
   */
  whenAbsent?: "open" | "joined";
  /**
   * Capacitors: it has a positive side, the first of its two points.
   */
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
  /**
   * Switches: open or closed in each condition.
   */
  positions?: {
    [k: string]: "open" | "closed";
  };
  /**
   * Conditions in which it is in circuit: standby, operating.
   */
  presentIn?: string[];
  /**
   * What should be measured on this part before power.
   */
  measure?: ("resistance" | "capacitance" | "leakage" | "esr" | "inductance" | "dcr" | "emission" | "continuity" | "insulation")[];
  /**
   * How it fails with the years.
   */
  ages?: string;
  /**
   * When it is changed.
   */
  replace?: {
    /**
     * When it is changed, with the figure.
     */
    rule: string;
    /**
     * Replaced on sight, whatever it measures.
     */
    always?: boolean;
    /**
     * Share of the marked value beyond which it is changed; a wider tolerance of its marking counts instead.
     */
    driftLimit?: number;
    /**
     * Source of the rule: an id of datasets/sources.csv.
     */
    source: string;
  };
  /**
   * What may be fitted instead.
   */
  substitute?: {
    /**
     * Share of the marked value.
     */
    lowest?: number;
    /**
     * Largest value that may be fitted, as a multiple of the old one.
     */
    highest?: number;
    /**
     * What may be fitted instead, in a sentence: kind, value, rating.
     */
    text?: string;
    /**
     * Source of that: an id of datasets/sources.csv.
     */
    source: string;
  };
  /**
   * Where the typical value comes from.
   */
  source?: string;
}
export interface StageWinding {
  /**
   * Its two ends; a centre tap stands between them.
   */
  between: string[];
  /**
   * Voltage and current: 300-0-300 V 90 mA.
   */
  typical: string;
  /**
   * Typical wire resistance, end to end.
   */
  ohms?: number;
  /**
   * A chassis may lack it.
   */
  optional?: boolean;
}
export interface StageSurround {
  /**
   * What stands in for the rest of the chassis.
   */
  kind: "load" | "resistor" | "battery" | "ac-source";
  /**
   * The positive side first. A point that is neither a terminal nor an inner point belongs to the surround alone.
   */
  between: StagePair;
  /**
   * Ohms of a resistor, amperes of a load that draws constant current (or ohms), DC volts of a battery, RMS volts of an AC source at the line's frequency and phase, from its second point to its first.
   */
  value: string;
  /**
   * Conditions in which it is there.
   */
  presentIn?: string[];
}
export interface StageExpected {
  /**
   * What this figure is called at the bench.
   */
  title: string;
  /**
   * Terminal or inner point that it is read at.
   */
  at?: string;
  /**
   * Terminal or inner point that it is read against.
   */
  to?: string;
  /**
   * For currents.
   */
  part?: string;
  /**
   * What the meter shows.
   */
  quantity: "dc-volts" | "ac-volts" | "ripple-volts" | "ohms" | "dc-amps" | "ac-amps";
  /**
   * Condition that it holds in: cold, tubes-out, standby, operating.
   */
  condition: string;
  /**
   * What the textbook gives, for comparison with the simulation.
   */
  formula?: string;
  /**
   * Published or customary window with the typical values and without the optional parts, SI.
   */
  low?: number;
  /**
   * Upper end of that window, SI.
   */
  high?: number;
  /**
   * Source of the window or formula: an id of datasets/sources.csv.
   */
  source: string;
}
export interface StageRequirement {
  /**
   * Name of the requirement within its template.
   */
  id: string;
  /**
   * What must hold, as a sentence.
   */
  title: string;
  /**
   * A comparison that must hold: `reservoir.ratedVolts >= 1.1 * reservoir.maxVolts`. Names are role.property; see DEVELOPERS.md.
   */
  formula: string;
  /**
   * What the left side of the first comparison is called, where its formula is long: lowest frequency of the tank.
   */
  measures?: string;
  /**
   * Role of the part that a broken rule speaks against, where the formula names several.
   */
  about?: string;
  /**
   * Condition whose simulation the properties come from. Default: worst over all powered conditions at high line.
   */
  condition?: string;
  /**
   * What it means when it does not hold.
   */
  otherwise: string;
  /**
   * How grave it is when it does not hold; danger: do not energise.
   */
  severity: "danger" | "replace" | "adjust" | "watch";
  /**
   * What to do at the bench when it does not hold.
   */
  action?: string;
  /**
   * Source of the limit: an id of datasets/sources.csv.
   */
  source: string;
}
