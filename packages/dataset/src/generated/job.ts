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
  /**
   * The chassis as a whole: its age, who built it, and the line it was made for.
   */
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
  /**
   * Stages that follow a template of the dataset, bound to the points of this chassis.
   */
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
  /**
   * The meters that the readings were taken with, by a short name of your own.
   */
  meters?: {
    [k: string]: JobMeter;
  };
  /**
   * What meters showed. More may stand in readings.csv beside this file.
   */
  readings?: JobReading[];
  /**
   * Anything that should stand in the record.
   */
  notes?: string[];
}
export interface JobPins {
  [k: string]: string;
}
export interface JobChassis {
  /**
   * What it is, where it comes from, what is known of its history.
   */
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
  /**
   * The supply line: what the maker designed for, and what the outlet gives.
   */
  line: {
    /**
     * What the maker's label says: 117 V.
     */
    designVolts: JobValue;
    /**
     * Frequency of the line, in hertz.
     */
    hertz: 25 | 50 | 60 | 400;
    /**
     * What the outlet gives. Default: the nominal voltage of today where the frequency is 60 Hz (120 V) or 50 Hz (230 V).
     */
    actualVolts?: JobValue;
    /**
     * Lowest line to be expected. Default: 5 % below nominal at 60 Hz, 10 % at 50 Hz.
     */
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
  /**
   * A short name of your own for this stage; inner points that nobody binds are called id:point.
   */
  id: string;
  /**
   * What the bench calls the stage. Default: the title of the template.
   */
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
  /**
   * What this stage works at where that differs from the template: {"bandLowHertz": "1.8 MHz", "swr": 3}.
   */
  settings?: {
    [k: string]: JobValue;
  };
  /**
   * Remarks on this stage.
   */
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
   * What stands on the part, or what the maker's papers give: "47k 1W 10%", ".05 600V paper", "8 H 85 mA 300 ohm"; a cord "2-wire" or "3-wire"; a fuse "T1A 250 V"; a load "60 mA", "5 kohm" or "60 mA at 250 V"; a battery "90 V".
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
  /**
   * What a meter said of the original part, in circuit or out.
   */
  measured?: JobMeasured;
  /**
   * Transformers: what each winding of the template is.
   */
  windings?: {
    [k: string]: JobWindingState;
  };
  /**
   * What was put in its place: a marking ("22 uF 500 V"), or an object that also says type, measurement, where it was fitted, whether it is only planned, and why. Without a marking or type: the old part, moved or measured again.
   */
  fitted?: JobFitted | JobValue;
  /**
   * True when the restorer took it out and put nothing in its place.
   */
  removed?: boolean;
  /**
   * The two points it lies between, when this chassis differs from the template.
   */
  between?: JobPair;
  /**
   * Where its leads were really found, when not where they belong.
   */
  foundBetween?: JobPair;
  /**
   * Where its pins were really found, when not where they belong.
   */
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
   * Switches: position by condition, such as {"standby": "open"}. Default: closed wherever there is power.
   */
  positions?: {
    [k: string]: "open" | "closed";
  };
  /**
   * Remark on this part.
   */
  note?: string;
}
export interface JobPart {
  /**
   * What the drawing or the chassis calls it: R12, C3A, V4. Sections of one bulb take letters: V3A, V3B.
   */
  name: string;
  kind: JobKind;
  role?: string;
  /**
   * Stage that it belongs to in the report.
   */
  stage?: string;
  between?: JobPair;
  /**
   * Parts with more than two leads, by pin: tubes plate, grid, screen, cathode; rectifiers plate-1, plate-2, cathode; controls a, wiper, b; cords hot-in, hot-out, neutral-in, neutral-out, earth-in, earth-out.
   */
  pins?: JobPins;
  /**
   * Where its leads were really found, when not where they belong.
   */
  foundBetween?: JobPair;
  /**
   * Where its pins were really found, when not where they belong.
   */
  foundPins?: JobPins;
  /**
   * What was found in its place, when that is not what belongs there.
   */
  foundMarked?: JobValue;
  /**
   * Tube or rectifier type that was found in its place.
   */
  foundType?: string;
  /**
   * Transformers, by winding. The one on the line is called primary; heater windings have heater in their name, a rectifier's own rectifier.
   */
  windings?: {
    [k: string]: JobWinding;
  };
  /**
   * What stands on the part, or what the maker's papers give: "47k 1W 10%", ".05 600V paper", "8 H 85 mA 300 ohm"; a cord "2-wire" or "3-wire"; a fuse "T1A 250 V"; a load "60 mA", "5 kohm" or "60 mA at 250 V"; a battery "90 V".
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
   * What a meter said of the original part, in circuit or out.
   */
  measured?: JobMeasured;
  /**
   * What was put in its place: a marking ("22 uF 500 V"), or an object that also says type, measurement, where it was fitted, whether it is only planned, and why. Without a marking or type: the old part, moved or measured again.
   */
  fitted?: JobFitted | JobValue;
  /**
   * True when the restorer took it out and put nothing in its place.
   */
  removed?: boolean;
  /**
   * Switches: position by condition, such as {"standby": "open"}. Default: closed wherever there is power.
   */
  positions?: {
    [k: string]: "open" | "closed";
  };
  /**
   * Loads: the conditions in which they draw. Default: wherever all tubes are in.
   */
  presentIn?: string[];
  /**
   * Remark on this part.
   */
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
  /**
   * 325-0-325 V 120 mA, 6.3 V 3.5 A: voltage at rated current; without a current, open-circuit voltage.
   */
  marked?: JobValue;
  /**
   * Wire resistance, end to end.
   */
  measured?: JobValue;
  /**
   * Measured open-circuit RMS voltage at the design line voltage, one side of a tapped winding.
   */
  openVolts?: JobValue;
  /**
   * True when this transformer has no such winding.
   */
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
  /**
   * Capacitors: equivalent series resistance, as an ESR meter or bridge shows it.
   */
  esr?: JobValue;
  /**
   * Chokes and coils: wire resistance.
   */
  dcr?: JobValue;
  /**
   * Tubes: share of a new tube's, 80 %.
   */
  emission?: JobValue;
  /**
   * What the measurement comes to in a word; open, shorted and dead parts are simulated as such.
   */
  condition?: "good" | "weak" | "shorted" | "open" | "dead" | "gassy";
  /**
   * Name of the meter, from `meters`.
   */
  meter?: string;
  /**
   * How it was measured, or what else was seen.
   */
  note?: string;
}
export interface JobFitted {
  /**
   * What stands on the new part.
   */
  marked?: JobValue;
  /**
   * Type of the new tube or rectifier.
   */
  type?: string;
  /**
   * What a meter said of the new part.
   */
  measured?: JobMeasured;
  /**
   * Where it was fitted, when elsewhere than the old part.
   */
  between?: JobPair;
  /**
   * Where its pins went, when elsewhere than the old part's.
   */
  pins?: JobPins;
  /**
   * Windings of a new or rewound transformer that differ from the old one's.
   */
  windings?: {
    [k: string]: JobWindingState;
  };
  /**
   * True while the change is only planned.
   */
  planned?: boolean;
  /**
   * Why the change was made; it stands in the record.
   */
  why?: string;
}
export interface JobCondition {
  /**
   * What the bench calls this condition.
   */
  title?: string;
  /**
   * The condition that it starts from. Default: operating.
   */
  like?: "cold" | "tubes-out" | "standby" | "operating";
  /**
   * Whether the line is on. Default: as in the condition that it is like.
   */
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
  /**
   * Remark on this condition.
   */
  note?: string;
}
export interface JobMeter {
  /**
   * What the bench calls this meter.
   */
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
  /**
   * The point that the meter's live lead was on; for amperes the name of the part that the current went through (or stage.role).
   */
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
  /**
   * What the meter showed, with its unit: 285 V, 4.7k, 55 mA; an ohmmeter that shows nothing reads "open".
   */
  value: JobValue;
  /**
   * Name of the meter, from `meters`. Default: a digital multimeter of 10 Mohm.
   */
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
  /**
   * Remark on this reading.
   */
  note?: string;
}
