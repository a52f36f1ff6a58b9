// Generated from schemas/rule-of-thumb.schema.json; run npm run generate. Changes made here are lost.

/**
 * One rule that the bench works by, with its figure, where it holds, and who sees it otherwise.
 */
export type RuleOfThumb = {
  [k: string]: unknown;
} & {
  $schema?: string;
  schemaVersion: 1;
  /**
   * Id of the rule: the file's name.
   */
  id: string;
  /**
   * What the rule is about, in a few words.
   */
  title: string;
  /**
   * The rule as one would say it at the bench, with its figures.
   */
  statement: string;
  /**
   * The rule as a formula, SI.
   */
  formula?: {
    /**
     * In the expression language of the templates; names as in where.
     */
    expression: string;
    /**
     * What it gives.
     */
    gives: string;
    /**
     * Unit of the result.
     */
    unit: string;
    /**
     * Each name with its meaning and unit.
     */
    where: {
      [k: string]: string;
    };
    /**
     * Values for the names, and what comes out, rounded to the digits of a bench figure.
     */
    example?: {
      /**
       * A value for each name, in base units.
       */
      values: {
        [k: string]: number;
      };
      /**
       * What comes out, to the digits that are written.
       */
      result: number;
    };
  };
  /**
   * The rule's figures, SI.
   */
  figures?: ({
    [k: string]: unknown;
  } & {
    /**
     * What the figure is of.
     */
    what: string;
    /**
     * The figure, in the unit named.
     */
    value?: number;
    /**
     * Lower end, where the rule is a range.
     */
    low?: number;
    /**
     * Upper end, where the rule is a range.
     */
    high?: number;
    /**
     * SI unit; ratio for shares and multiples.
     */
    unit: "V" | "A" | "W" | "ohm" | "F" | "H" | "Hz" | "s" | "m" | "J" | "degC" | "ratio" | "percent";
    /**
     * Source of the figure: an id of datasets/sources.csv.
     */
    source: string;
  })[];
  /**
   * Where the rule is used.
   */
  appliesTo: {
    /**
     * Kinds of parts.
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
     * Roles of templates.
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
     * Ids of stage templates.
     */
    templates?: string[];
    /**
     * The work at the bench that it belongs to, where it is about no one part: first power.
     */
    work?: string;
  };
  /**
   * Where it stops holding, or what it leaves out.
   */
  limits: string;
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
   * Cautions that belong to using it.
   */
  cautions?: string[];
  /**
   * Where it is said: ids of datasets/sources.csv.
   */
  sources: string[];
};
