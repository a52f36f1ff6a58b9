import type { SourceText } from "@underchassis/source-text";
import type { Diagnostic } from "../model/diagnostic.ts";
import type { Complaint, Rule, RuleFacts, Scope } from "../model/rule.ts";
import { SCOPES } from "../model/rule.ts";
import { Locator } from "./locate.ts";

/** A diagnostic with what orders it: the cause before what follows from it. */
export interface Ranked {
  diagnostic: Diagnostic;
  order: number;
}

/** Turns the complaints of rules about one file into diagnostics. */
export class FileReporter {
  readonly #file: string;
  readonly #source: () => SourceText;
  #locator: Locator | undefined;

  constructor(file: string, source: () => SourceText) {
    this.#file = file;
    this.#source = source;
  }

  /** @throws Error when the complaint points outside the file; the runner then blames the rule */
  diagnostic(rule: RuleFacts & { scope: Scope; phase?: "shape" | "sense"; of?: string }, complaint: Complaint): Ranked {
    const { at, message, expected, received, help, nearest, byHand, rank = 0 } = complaint;
    if (at !== undefined) this.#locator ??= new Locator(this.#source());
    const position = at === undefined ? {} : this.#locator?.positionOf(at);
    return {
      order: orderOf(rule) + rank / 100,
      diagnostic: {
        code: rule.code,
        severity: rule.severity,
        file: this.#file,
        ...position,
        message: shortened(message),
        ...(expected === undefined ? {} : { expected: shortened(expected) }),
        ...(received === undefined ? {} : { received: shortened(received) }),
        ...(help === undefined ? {} : { help }),
        ...(nearest === undefined ? {} : { nearest }),
        ...(rule.fixable === true && byHand !== true ? { fix: "npm run validate -- --fix" } : {}),
      },
    };
  }
}

/** What a hostile file writes must not fill the page. */
const LONGEST_SHOWN = 1000;
const shortened = (text: string): string => (text.length <= LONGEST_SHOWN ? text : `${text.slice(0, LONGEST_SHOWN)}...`);

/** Syntax before shape before the rest of a record, then the file, then other files, then the circuit. */
function orderOf(rule: { scope: Scope; phase?: "shape" | "sense"; fixable?: true; of?: string }): number {
  const scope = SCOPES.indexOf(rule.scope) * 10;
  if (rule.scope === "bytes") return rule.fixable === true ? 38 : scope;
  // A template reads otherwise because of a tube, and a job grades otherwise because of a template, seldom the other way round.
  if (rule.scope === "electrical") return scope + (rule.of === "job" ? 5 : rule.of === "template" ? 2 : 0);
  return rule.scope === "record" && rule.phase !== "shape" ? scope + 5 : scope;
}

/** What a rule that threw becomes. */
export function ruleFailure(rule: Rule, file: string, error: unknown): Ranked {
  return {
    order: 90,
    diagnostic: {
      code: RULE_FAILED,
      severity: "error",
      file,
      message: `the rule ${rule.code} (${rule.name}) failed: ${error instanceof Error ? error.message : String(error)}`,
      help: "this is a fault of the validator, not of your file; please report it with the file",
    },
  };
}

/** Code of diagnostics that no rule owns. */
export const RULE_FAILED = "UC-901";
export const FILE_UNREADABLE = "UC-902";

/** Order of what is printed: errors first, causes first, then by place. */
export function compareRanked(a: Ranked, b: Ranked): number {
  const [one, other] = [a.diagnostic, b.diagnostic];
  return (
    Number(one.severity === "warning") - Number(other.severity === "warning") ||
    a.order - b.order ||
    compareText(one.file, other.file) ||
    (one.line ?? 0) - (other.line ?? 0) ||
    (one.column ?? 0) - (other.column ?? 0) ||
    compareText(one.code, other.code) ||
    compareText(one.message, other.message)
  );
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
