// Generated from schemas/job.schema.json; run npm run generate. Changes made here are lost.

/**
 * A value as it stands on the part or on the meter: 40 mfd 450V, 4R7, 285 V.
 */
export type JobValue = string | number;
/**
 * The two points that the part lies between; the positive (anode) side first.
 *
 * @minItems 2
 * @maxItems 2
 */
export type JobPair = [string, string];
/**
 * What the part is. A rectifier is any diode: vacuum, silicon, selenium, gas.
 */
export type JobKind =
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
 * One chassis on one bench: what it is made of, what was measured, what was changed, what the meter read.
 */
export interface Job {
  /**
   * Where editors find this schema.
   */
  $schema?: string;
  /**
   * Version of the job format.
   */
  format: 1;
  /**
   * What the bench calls this chassis.
   */
  title: string;
  /**
   * Dataset version that this job was last graded with.
   */
  datasetVersion?: string;
  chassis: JobChassis;
  /**
   * The point that readings count from and that the simulation calls 0 V. Default: chassis. Transformerless sets: their B- bus.
   */
  reference?: string;
  /**
   * The chassis's own points, each with a word on where it is. Optional; once given, every point that parts and readings use must be listed.
   */
  points?: {
    [k: string]: string;
  };
  stages?: JobStage[];
  /**
   * Parts beyond the templates. More may stand in parts.csv beside this file.
   */
  parts?: JobPart[];
  /**
   * Own conditions, or changes to the ones that always exist: cold, tubes-out, standby, operating.
   */
  conditions?: {
    [k: string]: JobCondition;
  };
  meters?: {
    [k: string]: JobMeter;
  };
  /**
   * What meters showed. More may stand in readings.csv beside this file.
   */
  readings?: JobReading[];
  notes?: string[];
}
export interface JobPins {
  [k: string]: string;
}
export interface JobChassis {
  description?: string;
  /**
   * Year of making, as near as known.
   */
  era?: number;
  /**
   * Who put it together. Kits and home-built sets carry more wiring errors.
   */
  assembly?: "factory" | "kit" | "home" | "unknown";
  /**
   * Whether a power transformer stands between the line and the chassis. Default: transformer.
   */
  isolation?: "transformer" | "transformerless";
  line: {
    /**
     * What the maker's label says: 117 V.
     */
    designVolts: JobValue;
    hertz: 25 | 50 | 60 | 400;
    /**
     * What the outlet gives. Default: the nominal voltage of today where the frequency is 60 Hz (120 V) or 50 Hz (230 V).
     */
    actualVolts?: JobValue;
    lowVolts?: JobValue;
    /**
     * Highest line to be expected. Default: 5 % above nominal at 60 Hz, 10 % at 50 Hz.
     */
    highVolts?: JobValue;
    /**
     * Point where the line's hot conductor enters. Default: line hot.
     */
    hot?: string;
    /**
     * Default: line neutral.
     */
    neutral?: string;
    /**
     * Default: earth.
     */
    earth?: string;
  };
}
export interface JobStage {
  id: string;
  title?: string;
  /**
   * Id of a stage template of the dataset.
   */
  template: string;
  /**
   * The template's terminals on the left, the chassis's own points on the right.
   */
  bind?: {
    [k: string]: string;
  };
  /**
   * What this chassis has in each role of the template.
   */
  parts?: {
    [k: string]: JobPartState;
  };
  notes?: string[];
}
/**
 * A part's three lives: what is marked on it, what was measured, what was fitted in its place.
 */
export interface JobPartState {
  /**
   * C3A, R12, V4.
   */
  name?: string;
  /**
   * What stands on the part, or what the maker's papers give.
   */
  marked?: JobValue;
  /**
   * Tube or rectifier type: 6V6GT, 1N4007.
   */
  type?: string;
  /**
   * Where it is known and not in the marking: 10 %.
   */
  tolerance?: JobValue;
  /**
   * True when this chassis has no such part.
   */
  absent?: boolean;
  measured?: JobMeasured;
  /**
   * Transformers: what each winding of the template is.
   */
  windings?: {
    [k: string]: JobWindingState;
  };
  fitted?: JobFitted | JobValue;
  /**
   * True when the restorer took it out and put nothing in its place.
   */
  removed?: boolean;
  between?: JobPair;
  /**
   * Where its leads were really found, when not where they belong.
   */
  foundBetween?: JobPair;
  foundPins?: JobPins;
  /**
   * What was found in its place, when that is not what belongs there: a wrong value, an earlier hand's part.
   */
  foundMarked?: JobValue;
  /**
   * The same for tubes and rectifiers: the type that was found in its place.
   */
  foundType?: string;
  /**
   * Switches: position in each condition.
   */
  positions?: {
    [k: string]: "open" | "closed";
  };
  note?: string;
}
export interface JobPart {
  name: string;
  kind: JobKind;
  role?: string;
  /**
   * Stage that it belongs to in the report.
   */
  stage?: string;
  between?: JobPair;
  /**
   * Parts with more than two leads: plate, grid, cathode, screen; plate-1, plate-2; wiper …
   */
  pins?: JobPins;
  foundBetween?: JobPair;
  foundPins?: JobPins;
  /**
   * What was found in its place, when that is not what belongs there.
   */
  foundMarked?: JobValue;
  foundType?: string;
  windings?: {
    [k: string]: JobWinding;
  };
  marked?: JobValue;
  type?: string;
  tolerance?: JobValue;
  measured?: JobMeasured;
  fitted?: JobFitted | JobValue;
  removed?: boolean;
  positions?: {
    [k: string]: "open" | "closed";
  };
  /**
   * Loads: the conditions in which they draw. Default: wherever all tubes are in.
   */
  presentIn?: string[];
  note?: string;
}
export interface JobWinding {
  /**
   * Start and finish, or start, centre tap, finish.
   */
  between: string[];
  /**
   * 325-0-325 V 120 mA, 6.3 V 3.5 A: voltage at rated current.
   */
  marked: JobValue;
  /**
   * Wire resistance, end to end.
   */
  measured?: JobValue;
  /**
   * Measured open-circuit RMS voltage at the design line voltage, one side of a tapped winding.
   */
  openVolts?: JobValue;
}
export interface JobWindingState {
  marked?: JobValue;
  /**
   * Wire resistance, end to end.
   */
  measured?: JobValue;
  openVolts?: JobValue;
  absent?: boolean;
}
export interface JobMeasured {
  /**
   * Resistance, capacitance or inductance read.
   */
  value?: JobValue;
  /**
   * In circuit, or with one lead lifted. Default: out.
   */
  circuit?: "in" | "out";
  /**
   * Capacitors: leakage current, or resistance, at the working voltage.
   */
  leakage?: JobValue;
  /**
   * Voltage at which the leakage was read. Default: the rated voltage.
   */
  atVolts?: JobValue;
  esr?: JobValue;
  /**
   * Chokes and coils: wire resistance.
   */
  dcr?: JobValue;
  /**
   * Tubes: share of a new tube's, 80 %.
   */
  emission?: JobValue;
  condition?: "good" | "weak" | "shorted" | "open" | "dead" | "gassy";
  meter?: string;
  note?: string;
}
export interface JobFitted {
  marked?: JobValue;
  type?: string;
  measured?: JobMeasured;
  /**
   * Where it was fitted, when elsewhere than the old part.
   */
  between?: JobPair;
  pins?: JobPins;
  windings?: {
    [k: string]: JobWindingState;
  };
  /**
   * True while the change is only planned.
   */
  planned?: boolean;
  why?: string;
}
export interface JobCondition {
  title?: string;
  /**
   * The condition that it starts from. Default: operating.
   */
  like?: "cold" | "tubes-out" | "standby" | "operating";
  powered?: boolean;
  /**
   * Line voltage during the readings.
   */
  lineVolts?: JobValue;
  /**
   * Which tubes are in (heated and in their sockets).
   */
  tubes?: ("all" | "none" | "rectifiers") | string[];
  /**
   * Switch positions by part name or stage.role.
   */
  switches?: {
    [k: string]: "open" | "closed";
  };
  /**
   * Loads that differ, by part name or stage.role.
   */
  loads?: {
    [k: string]: JobValue;
  };
  note?: string;
}
export interface JobMeter {
  title?: string;
  /**
   * Input resistance: 10 Mohm. Or ohms per volt: 20 kohm/V, with `range`.
   */
  input?: JobValue;
  /**
   * Of the reading: 0.8 %.
   */
  accuracy?: JobValue;
  /**
   * Ohms function: open-circuit test voltage.
   */
  testVolts?: JobValue;
}
export interface JobReading {
  at: string;
  /**
   * Default: the reference.
   */
  to?: string;
  /**
   * ac-volts: RMS of the alternating part; ripple-volts: peak to peak; amperes: `at` names the part.
   */
  quantity: "dc-volts" | "ac-volts" | "ripple-volts" | "ohms" | "dc-amps" | "ac-amps";
  /**
   * Default: operating; for ohms: cold.
   */
  condition?: string;
  /**
   * Whether it was read before or after the work. Default: found.
   */
  life?: "found" | "restored";
  value: JobValue;
  meter?: string;
  /**
   * Meter range, for ohms-per-volt meters.
   */
  range?: JobValue;
  /**
   * Line voltage during this very reading.
   */
  lineVolts?: JobValue;
  /**
   * What the maker's papers say it should be: 270 to 300 V.
   */
  published?: JobValue;
  note?: string;
}
