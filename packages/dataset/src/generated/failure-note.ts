// Generated from schemas/failure-note.schema.json; run npm run generate. Changes made here are lost.

/**
 * One way in which one kind of part fails: how it shows, what proves it, what it takes out next, the cure.
 */
export interface FailureNote {
  $schema?: string;
  schemaVersion: 1;
  /**
   * Id of the note: the file's name.
   */
  id: string;
  /**
   * What fails and how, in a few words.
   */
  title: string;
  /**
   * What kind of part fails.
   */
  partKind:
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
    | "battery"
    | "wiring";
  /**
   * Roles of stage templates in which it happens: plateLoad. With neither roles nor duties: every part of the kind.
   */
  roles?: string[];
  /**
   * Duties in which it happens, whatever the role is called: plate-load.
   */
  duties?: (
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
    | "b-plus-fuse"
  )[];
  /**
   * What such parts are made of; absent: any make.
   */
  families?: (
    | "paper"
    | "oil"
    | "electrolytic"
    | "tantalum"
    | "mica"
    | "ceramic"
    | "film"
    | "air"
    | "composition"
    | "film-resistor"
    | "wirewound"
    | "selenium"
    | "silicon"
    | "copper-oxide"
    | "vacuum"
    | "gas"
  )[];
  /**
   * Years in which parts that fail so were built.
   */
  era?: {
    /**
     * First year of such parts.
     */
    from?: number;
    /**
     * Last year of such parts.
     */
    to?: number;
  };
  /**
   * What happens inside the part, and why.
   */
  mechanism: string;
  /**
   * What is noticed.
   */
  symptom: {
    /**
     * How it shows at the bench.
     */
    text: string;
    /**
     * What a meter shows it in.
     */
    quantity?: "dc-volts" | "ac-volts" | "ripple-volts" | "ohms" | "dc-amps" | "ac-amps";
    /**
     * How that reading is off.
     */
    direction?: "low" | "high" | "zero" | "present" | "unsteady";
    /**
     * By how much, where that is known.
     */
    size?: string;
  };
  /**
   * The measurement that tells.
   */
  measurement: {
    /**
     * What to measure, how, and what proves the fault.
     */
    text: string;
    /**
     * What is measured; a job can carry it.
     */
    quantity?:
      | "resistance"
      | "capacitance"
      | "leakage"
      | "esr"
      | "inductance"
      | "dcr"
      | "emission"
      | "continuity"
      | "insulation"
      | "dc-volts"
      | "ac-volts"
      | "ripple-volts"
      | "dc-amps"
      | "ac-amps";
    /**
     * The figure at which it counts as failed.
     */
    limit?: string;
  };
  /**
   * What it destroys when it is left.
   */
  takesOutNext?: string[];
  /**
   * What puts it right.
   */
  cure: string;
  /**
   * Where practitioners disagree: each view with its source.
   */
  schools?: {
    /**
     * One of several opinions of the trade.
     */
    view: string;
    /**
     * Source of the view: an id of datasets/sources.csv.
     */
    source: string;
  }[];
  /**
   * Ids of cautions (datasets/cautions).
   */
  cautions?: string[];
  /**
   * Relative frequency among faults of this part kind; a judgement unless the source says otherwise.
   */
  frequency?: "very-common" | "common" | "occasional" | "rare";
  /**
   * The fault as a search for one tries it on a part.
   */
  fault?: {
    /**
     * What it does to the network. lost-capacity, high-esr: capacitors; dead, weak, gassy, electrode-short: tubes; line-voltage: the line, not a part.
     */
    kind:
      | "open"
      | "short"
      | "leaky"
      | "drift-high"
      | "drift-low"
      | "lost-capacity"
      | "high-esr"
      | "reversed"
      | "wrong-value"
      | "exchanged"
      | "moved-lead"
      | "dead"
      | "weak"
      | "gassy"
      | "electrode-short"
      | "shorted-turns"
      | "bridge"
      | "line-voltage";
    /**
     * Relative odds that a given part of this description has it, in a chassis of its era that is brought in for repair: 1 rare (about one part in 10 000), 10 occasional (one in 1000), 50 common (one in 200), 200 very common (one in 50), 1000 nearly expected (one in 10). Only ratios count; a judgement unless the source says otherwise.
     */
    weight: number;
    /**
     * Factor on the weight in a chassis put together from a kit or at home: above 1 for wiring errors. Absent: 1.
     */
    kitBuilt?: number;
    /**
     * Kinds of part that carry the fault where the note is about wiring. Absent: the note's partKind; for wiring, every kind.
     */
    partKinds?: (
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
      | "battery"
    )[];
  };
  /**
   * Where it is said: ids of datasets/sources.csv.
   */
  sources: string[];
}
