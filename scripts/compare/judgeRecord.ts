import type { Verdict } from "./change.ts";
import type { Difference } from "./differences.ts";

interface Rule {
  kind: RegExp;
  shape: RegExp;
  judge(difference: Difference): Verdict | undefined;
}

const verdict = (bump: Verdict["bump"], why: string): Verdict => ({ bump, why });
const isGone = ({ after }: Difference): boolean => after === undefined;
const isNew = ({ before }: Difference): boolean => before === undefined;

/** A rule for what jobs may name: gone breaks them, new does not. */
const named = (kind: RegExp, shape: RegExp, what: string): Rule => ({
  kind,
  shape,
  judge: (difference) =>
    isGone(difference)
      ? verdict("major", `${what} is gone, and a job may name it`)
      : isNew(difference)
        ? verdict("minor", `${what} is new`)
        : undefined,
});

const mustBeBound = (terminal: unknown): boolean => {
  const { default: fallback, optional } = terminal as { default?: string; optional?: boolean };
  return fallback === undefined && optional !== true;
};

/** First match counts. */
const RULES: readonly Rule[] = [
  { kind: /./, shape: /^(schemaVersion|format)$/, judge: () => verdict("major", "the record follows another schema version") },
  {
    kind: /^stages$/,
    shape: /^terminals\[\]$/,
    judge: (difference) =>
      !isGone(difference) && mustBeBound(difference.after)
        ? verdict("major", "a new terminal must be bound, and no job binds it")
        : undefined,
  },
  {
    kind: /^stages$/,
    shape: /^terminals\[\]\.(default|optional)$/,
    judge: (difference) =>
      isGone(difference) || difference.after === false
        ? verdict("major", "a job that leaves this terminal unbound no longer reads")
        : isNew(difference)
          ? verdict("minor", "the terminal may now be left unbound")
          : verdict("minor", "the terminal is bound otherwise where a job says nothing"),
  },
  named(/^stages$/, /^terminals\[\]$/, "a terminal"),
  named(/^stages$/, /^parts\[\]$/, "a role"),
  named(/^stages$/, /^points(\.[^.]+)?$/, "an inner point"),
  named(/^stages$/, /^parts\[\]\.windings(\.[^.]+)?$/, "a winding"),
  named(/^stages$/, /^parts\[\]\.pins(\.[^.]+)?$/, "a pin"),
  named(/^stages$/, /^settings(\.[^.]+)?$/, "a setting"),
  {
    kind: /^stages$/,
    shape: /^settings\.[^.]+\.unit$/,
    judge: () => verdict("major", "what a job writes for this setting is read in another unit"),
  },
  named(/^tubes$/, /^names\[\]$/, "a name of the tube"),
  {
    kind: /^stages$/,
    shape: /^parts\[\]\.kind$/,
    judge: () => verdict("major", "what a job writes for this role is read as another kind of part"),
  },
  {
    kind: /^stages$/,
    shape: /^parts\[\]\.(between|pins|windings|polarised|optional|whenAbsent|presentIn|positions)/,
    judge: () => verdict("minor", "the circuit of the stage is another"),
  },
  {
    kind: /^stages$/,
    shape: /^requirements\[\]/,
    judge: ({ shape }) => (/\.(title|otherwise|action|source)$/.test(shape) ? undefined : verdict("minor", "a requirement is another")),
  },
  {
    kind: /^table descriptions$/,
    shape: /^(columns\[\]|lists\.[^.[]+)/,
    judge: (difference) => (isGone(difference) ? verdict("major", "a column or choice is gone") : undefined),
  },
  { kind: /^table descriptions$/, shape: /^key/, judge: () => verdict("major", "rows are told apart otherwise") },
];

const TEXTS =
  /(^|\.)(\$schema|title|summary|meaning|ages|rule|text|otherwise|action|note|view|mechanism|symptom|cure|size|limit|detail|fittedTo|why|description|takesOutNext|source|sources|failureNotes|cautions)(\.[^.]+)?(\[\])?$/;

/** What one difference of a record asks of the version, before recorded jobs are graded: they can only raise it. */
export function judgeRecord(kind: string, difference: Difference): Verdict {
  for (const rule of RULES) {
    const given = rule.kind.test(kind) && rule.shape.test(difference.shape) ? rule.judge(difference) : undefined;
    if (given !== undefined) return given;
  }
  if (TEXTS.test(difference.shape)) return verdict("patch", "text or source");
  if (isNew(difference)) return verdict("minor", "a property is new");
  if (isGone(difference)) return verdict("minor", "a property is gone");
  return verdict("patch", "a corrected figure, as far as no recorded job grades otherwise");
}

/** What a record that is gone or new asks of the version. */
export function judgeWhole(kind: string, what: "added" | "removed"): Verdict {
  if (kind === "worked examples" || kind === "worked-examples")
    return verdict("patch", "worked examples hold the calculator; nothing refers to them");
  return what === "added" ? verdict("minor", "a record is new") : verdict("major", "an id is gone");
}
