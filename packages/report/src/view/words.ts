import { READING_UNIT, type Report, type ReportFinding, type ReportPartLine, type ReportReadingLine } from "@underchassis/dataset";

export type Severity = ReportFinding["severity"];
export type Level = Report["clearance"]["level"];
export type Outcome = Report["checks"][number]["outcome"];

/** How a severity is said to a reader; never by colour alone. */
export const severityWords: Readonly<Record<Severity, string>> = {
  danger: "danger",
  replace: "replace",
  adjust: "adjust",
  watch: "watch",
  unmeasured: "not measured",
  good: "good",
};

export const outcomeWords: Readonly<Record<Outcome, string>> = {
  ...severityWords,
  "not-applicable": "does not apply",
  failed: "could not be run",
};

/** The step itself, as in "holds back full line voltage". */
export const levelWords: Readonly<Record<Level, string>> = {
  none: "no power",
  "current-limited": "current-limited power",
  "full-line": "full line voltage",
  service: "service",
};

const levels: readonly Level[] = ["none", "current-limited", "full-line", "service"];

/**
 * When a piece of work is due: "before full line voltage" while that step is still ahead of the reached level, else "at the
 * step: full line voltage".
 */
export function whenWord(step: Level, reached: Level): string {
  return levels.indexOf(step) > levels.indexOf(reached) ? `before ${levelWords[step]}` : `at the step: ${levelWords[step]}`;
}

export const verdictWords: Readonly<Record<ReportReadingLine["verdict"], string>> = {
  within: "within",
  outside: "outside",
  "far-outside": "far outside",
  "not-computed": "not computed",
};

export const changeWords: Readonly<Record<ReportPartLine["change"], string>> = {
  none: "",
  replaced: "replaced",
  added: "added",
  removed: "removed",
  moved: "moved",
  planned: "planned",
};

const lifeWords: Readonly<Record<string, string>> = {
  designed: "as designed",
  found: "as found",
  restored: "as restored",
  planned: "as planned",
};

const quantityWords: Readonly<Record<string, string>> = {
  "dc-volts": "DC voltage",
  "ac-volts": "AC voltage, RMS",
  "ripple-volts": "ripple, peak to peak",
  ohms: "resistance",
  "dc-amps": "direct current",
  "ac-amps": "alternating current, RMS",
};

const own = (words: Readonly<Record<string, string>>, key: string): string | undefined =>
  Object.hasOwn(words, key) ? words[key] : undefined;

/** "as found"; a life that is not known here is said as it stands. */
export const lifeWord = (life: string): string => own(lifeWords, life) ?? life;
/** "DC voltage" for dc-volts; a quantity that is not known here is said as it stands. */
export const quantityWord = (quantity: string): string => own(quantityWords, quantity) ?? quantity;
/** Symbol of the SI unit in which readings of a quantity are kept. */
export const quantityUnit = (quantity: string): string => own(READING_UNIT, quantity) ?? "";
