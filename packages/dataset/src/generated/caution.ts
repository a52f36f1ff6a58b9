// Generated from schemas/caution.schema.json; run npm run generate. Changes made here are lost.

/**
 * A hazard of the bench and what to do about it, in words that a report prints.
 */
export interface CautionRecord {
  $schema?: string;
  schemaVersion: 1;
  /**
   * Id of the caution: the file's name.
   */
  id: string;
  /**
   * The hazard in a few words.
   */
  title: string;
  /**
   * What can hurt whom, and the precaution. Never calls anything safe; defers to local codes and licensed practice where mains wiring is concerned.
   */
  text: string;
  /**
   * 1 is printed first.
   */
  rank: number;
  /**
   * Printed on every report.
   */
  always?: boolean;
  /**
   * Where it applies, besides the templates and findings that name it: any one entry suffices; all that an entry states must hold together.
   */
  appliesTo?: CautionPlace[];
  /**
   * Where it is said: ids of datasets/sources.csv.
   */
  sources: string[];
}
/**
 * One place where a hazard is met.
 */
export interface CautionPlace {
  /**
   * Ids of stage templates.
   */
  templates?: string[];
  /**
   * Families of stage templates.
   */
  templateFamilies?: ("line" | "supply" | "audio" | "receiving" | "transmitting" | "instrument")[];
  /**
   * Kinds of part.
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
  /**
   * Roles of stage templates.
   */
  roles?: string[];
  /**
   * Duties of parts.
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
   * What a part is made of, as it was found or as it is fitted.
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
   * Tube and rectifier types by any of their names; a closing * stands for any ending: 4CX*.
   */
  types?: string[];
  /**
   * Whole words in a part's name, title and markings: oil-filled, ballast.
   */
  words?: string[];
  /**
   * Parts rated for this many volts or more.
   */
  ratedVoltsFrom?: number;
  /**
   * Whole words in the job's title or description: radium, oil-filled.
   */
  describedAs?: string[];
  /**
   * How the chassis stands to the line.
   */
  isolation?: "transformer" | "transformerless";
  /**
   * Years of the chassis; one whose year is not known counts as within.
   */
  era?: {
    /**
     * First year of such chassis.
     */
    from?: number;
    /**
     * Last year of such chassis.
     */
    to?: number;
  };
  /**
   * The simulation has more than this between a point and the chassis at its crest, at the highest line.
   */
  aboveVolts?: number;
}
