// Generated from schemas/report.schema.json; run npm run generate. Changes made here are lost.

/**
 * A graded job. SI base units throughout; text fields are for people.
 */
export interface Report {
  reportVersion: 1;
  tool: {
    name: "underchassis";
    version: string;
  };
  dataset: {
    version: string;
    /**
     * Dataset version that the job was last graded with, when it says so.
     */
    jobWrittenFor?: string;
    /**
     * How far that version is from the present one, when they differ. major: names, limits or meanings may be others; minor: something was added or loosened; patch: texts or single figures were corrected.
     */
    step?: "major" | "minor" | "patch";
  };
  job: {
    title: string;
    file: string;
    description?: string;
    era?: number;
    assembly: string;
    isolation: string;
    line: {
      designVolts: number;
      actualVolts: number;
      lowVolts: number;
      highVolts: number;
      hertz: number;
    };
    partCount: number;
    stageCount: number;
    readingCount: number;
    notes?: string[];
  };
  cautions: {
    id: string;
    title: string;
    text: string;
    /**
     * Parts, stages or findings that call for it; empty: always printed.
     */
    because: string[];
  }[];
  clearance: {
    level: "none" | "current-limited" | "full-line" | "service";
    /**
     * The step that is held back; absent at service.
     */
    next?: "current-limited" | "full-line" | "service";
    meaning: string;
    /**
     * What stands between the chassis and the next steps, in the order to clear it.
     */
    holds: {
      step: "current-limited" | "full-line" | "service";
      reason: string;
      /**
       * Index into findings; -1 when it is not a finding.
       */
      finding: number;
    }[];
    /**
     * Checks that could not be made, and what they lack.
     */
    notMade: string[];
    steps: {
      level: "none" | "current-limited" | "full-line" | "service";
      reached: boolean;
      text: string;
    }[];
  };
  counts: {
    danger: number;
    replace: number;
    adjust: number;
    watch: number;
    unmeasured: number;
    good: number;
  };
  /**
   * Worst first.
   */
  findings: ReportFinding[];
  stages: {
    id: string;
    title: string;
    template?: string;
    summary?: string;
    /**
     * What the stage works at and no part says: band, power, load.
     */
    settings?: {
      name: string;
      meaning: string;
      value: number;
      /**
       * Base unit; empty: a ratio.
       */
      unit: string;
      from: "job" | "template";
    }[];
    parts: ReportPartLine[];
    /**
     * Indices into findings.
     */
    findings: number[];
  }[];
  readings: ReportReadingLine[];
  suspects?: ReportSuspectReport;
  /**
   * What the chassis as it stands should read at its main points, in each powered condition, whether or not it was measured.
   */
  expected: {
    point: string;
    to: string;
    condition: string;
    quantity: string;
    life: string;
    nominal: number;
    low: number;
    high: number;
    ripple?: number;
    stage?: string;
    measured?: number;
  }[];
  /**
   * Before and after each change.
   */
  changes: {
    part: string;
    title: string;
    what: "replaced" | "added" | "removed" | "moved";
    from: string;
    to: string;
    why?: string;
    planned: boolean;
    effects: {
      label: string;
      unit: string;
      condition: string;
      before: number | null;
      after: number | null;
      limit?: number;
      limitSource?: string;
    }[];
  }[];
  order: {
    what: string;
    quantity: number;
    for: string[];
    why: string[];
  }[];
  /**
   * What to do at the bench, in order.
   */
  next: {
    action: string;
    why: string;
    expect?: string;
    cautions: string[];
    step?: "none" | "current-limited" | "full-line" | "service";
  }[];
  checks: {
    id: string;
    title: string;
    area: string;
    outcome: "danger" | "replace" | "adjust" | "watch" | "unmeasured" | "good" | "not-applicable" | "failed";
    note?: string;
    findings: number;
  }[];
  sources: {
    id: string;
    kind: "published" | "common-practice" | "from-memory" | "derived" | "computed";
    title: string;
  }[];
  warnings: {
    message: string;
    file?: string;
    line?: number;
    column?: number;
  }[];
}
export interface ReportFigure {
  label: string;
  value: number | null;
  unit: string;
  low?: number;
  high?: number;
  limit?: number;
  limitKind?: "maximum" | "minimum";
  margin?: number;
  how: string;
  source: string;
}
export interface ReportLocation {
  file: string;
  line: number;
  column: number;
}
export interface ReportFinding {
  check: string;
  severity: "danger" | "replace" | "adjust" | "watch" | "unmeasured" | "good";
  life: "designed" | "found" | "restored" | "planned";
  stage?: string;
  part?: string;
  point?: string;
  condition?: string;
  title: string;
  found: string;
  shouldBe: string;
  figures: ReportFigure[];
  why: string;
  action: string;
  cautions: string[];
  sources: string[];
  order?: {
    what: string;
    quantity: number;
    for: string;
    why: string;
  }[];
  holds?: "current-limited" | "full-line" | "service";
  location?: ReportLocation;
}
export interface ReportPartLine {
  id: string;
  name: string;
  title: string;
  kind: string;
  between: string;
  marked?: string;
  measured?: string;
  fitted?: string;
  /**
   * True when the job does not name it and the template's typical value stands in.
   */
  typical?: boolean;
  change: "none" | "replaced" | "added" | "removed" | "moved" | "planned";
  severity: "danger" | "replace" | "adjust" | "watch" | "unmeasured" | "good";
  watts?: number;
  ratedWatts?: number;
  maxVolts?: number;
  ratedVolts?: number;
}
/**
 * Which single fault explains readings that are off. Present when it was asked for.
 */
export interface ReportSuspectReport {
  verdict: "nothing-off" | "suspects" | "none-of-these" | "no-readings";
  /**
   * Belief that nothing is wrong but tolerances.
   */
  healthy: number;
  /**
   * Belief that it is something that the search does not know.
   */
  noneOfThese: number;
  suspects: ReportSuspect[];
  unexplained: ReportSuspectReading[];
  /**
   * The measurement with the largest expected information.
   */
  next?: {
    at: string;
    to: string;
    quantity: string;
    condition: string;
    bits: number;
    predictions: {
      title: string;
      /**
       * null: open.
       */
      value: number | null;
      /**
       * Two standard deviations.
       */
      spread: number;
    }[];
    cautions: string[];
    why: string;
  };
  /**
   * The suspect that forbids power, and where it would put a voltage that must not be there.
   */
  coldOnly?: {
    title: string;
    at: string;
    volts: number;
  };
  life: "found" | "restored";
  hypotheses: number;
  /**
   * Of these, leads and bridges at alternating points that were not looked at, since something else explains the readings.
   */
  spared: number;
  simulations: number;
  complete: boolean;
  seconds: number;
}
export interface ReportSuspect {
  rank: number;
  /**
   * Belief in the group.
   */
  posterior: number;
  prior: number;
  title: string;
  fault: ReportFault;
  second?: {
    title: string;
    fault: ReportFault;
  };
  /**
   * Values that the readings allow, SI.
   */
  low?: number;
  high?: number;
  readings: ReportSuspectReading[];
  /**
   * What no available reading tells from it.
   */
  group: {
    title: string;
    fault: ReportFault;
    posterior: number;
  }[];
  confirm: string;
  cautions: string[];
  hazard?: {
    at: string;
    volts: number;
    healthy: number;
  };
}
export interface ReportFault {
  kind: string;
  part: string;
  element: string;
  lead?: string;
  from?: string;
  to?: string;
  /**
   * Elements that fail with it: the other sections of a tube.
   */
  also?: string[];
  with?: string;
  /**
   * null: open.
   */
  value?: number | null;
  nominal?: number | null;
  parameter?: string;
}
export interface ReportSuspectReading {
  at: string;
  to: string;
  quantity: "dc-volts" | "ac-volts" | "ripple-volts" | "ohms" | "dc-amps" | "ac-amps";
  condition: string;
  /**
   * null: open.
   */
  read: number | null;
  predicted: number | null;
  healthy: number | null;
  deviation: number;
  /**
   * The suspect takes this reading for a slip of meter or pen.
   */
  slip?: boolean;
}
export interface ReportReadingLine {
  at: string;
  to: string;
  quantity: string;
  unit: string;
  condition: string;
  life: string;
  /**
   * null: open (infinite resistance).
   */
  measured: number | null;
  meter?: string;
  nominal?: number | null;
  low?: number | null;
  high?: number | null;
  publishedLow?: number;
  publishedHigh?: number;
  verdict: "within" | "outside" | "far-outside" | "not-computed";
  /**
   * (measured - nominal) / sigma.
   */
  deviation?: number;
  contributors?: string[];
  stage?: string;
  note?: string;
  location?: ReportLocation;
}
