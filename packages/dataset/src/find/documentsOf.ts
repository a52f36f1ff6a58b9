import type { Dataset } from "../dataset.ts";
import type { CautionRecord, FailureNote, RuleOfThumb, StageTemplate, TubeRecord } from "../generated/index.ts";
import type { FindDocument } from "./foundDocument.ts";

const texts = (...pieces: readonly (string | undefined | readonly (string | undefined)[])[]): string[] =>
  pieces.flat().filter((piece): piece is string => piece !== undefined && piece !== "");

function ofStage(template: StageTemplate): FindDocument {
  const { id, title, family, summary, terminals, parts, requirements, expected } = template;
  const bind = terminals.filter((terminal) => terminal.default === undefined).map((terminal) => `"${terminal.id}": "..."`);
  return {
    kind: "stage",
    id,
    title,
    texts: texts(
      summary,
      parts.flatMap((part) => [`${part.title}.`, part.ages]),
      expected.map((figure) => `${figure.title}.`),
      (requirements ?? []).flatMap((rule) => [`${rule.title}.`, rule.otherwise, rule.action]),
      `Family: ${family}.`,
    ),
    use: `in stages: { "id": "...", "template": "${id}"${bind.length === 0 ? "" : `, "bind": { ${bind.join(", ")} }`} }`,
  };
}

/** Where a job puts what a failure note says to measure. */
const MEASURED: Readonly<Record<string, string>> = {
  resistance: '"measured": { "value": "... ohm" }',
  capacitance: '"measured": { "value": "... uF" }',
  leakage: '"measured": { "leakage": "...", "atVolts": "... V" }',
  esr: '"measured": { "esr": "... ohm" }',
  inductance: '"measured": { "value": "... H" }',
  dcr: '"measured": { "dcr": "... ohm" }',
  emission: '"measured": { "emission": "... %" }',
  continuity: '"measured": { "value": "... ohm" }',
  insulation: '"measured": { "leakage": "... Mohm", "atVolts": "500 V" }',
};

function ofNote(note: FailureNote): FindDocument {
  const { id, title, partKind, mechanism, symptom, measurement, takesOutNext, cure, schools } = note;
  const { quantity } = measurement;
  const written = quantity === undefined ? undefined : (MEASURED[quantity] ?? `{ "at": "...", "quantity": "${quantity}", "value": "..." }`);
  return {
    kind: "failure-note",
    id,
    title,
    texts: texts(
      symptom.text,
      mechanism,
      measurement.text,
      measurement.limit === undefined ? undefined : `Limit: ${measurement.limit}.`,
      cure,
      takesOutNext === undefined || takesOutNext.length === 0 ? undefined : `Takes out next: ${takesOutNext.join(", ")}.`,
      (schools ?? []).map(({ view }) => view),
      `A fault of: ${partKind}.`,
    ),
    use:
      written === undefined
        ? "what to look at on the part; a job does not name it"
        : `in a job, ${quantity !== undefined && quantity in MEASURED ? "on the part" : "among the readings"}: ${written}`,
  };
}

function ofTube({ id, names, title, class: tubeClass, note, heater, base }: TubeRecord): FindDocument {
  const heated = heater === undefined ? undefined : `heater ${heater.volts} V ${heater.amps} A`;
  return {
    kind: "tube",
    id,
    title,
    names,
    texts: texts(`${[names.join(", "), tubeClass, heated, base && `base ${base.code}`].filter(Boolean).join("; ")}.`, note),
    use: `on a part of kind tube, rectifier or regulator-tube: "type": "${names[0] ?? id}"`,
  };
}

const ofCaution = ({ id, title, text, always }: CautionRecord): FindDocument => ({
  kind: "caution",
  id,
  title,
  texts: [text],
  use: always === true ? "printed on every report" : "printed on the report of every job that it applies to; a job does not name it",
});

const ofRule = ({ id, title, statement, limits, schools, formula }: RuleOfThumb): FindDocument => ({
  kind: "rule-of-thumb",
  id,
  title,
  texts: texts(
    statement,
    `Limits: ${limits}`,
    formula && `${formula.gives}: ${formula.expression}.`,
    (schools ?? []).map(({ view }) => view),
  ),
  use: "a rule for the bench; a job does not name it",
});

/**
 * Everything of the shared reference that can be looked up, as documents. Checks are not among them: they belong to grading.
 *
 * @returns documents in the order of the dataset
 */
export function documentsOf(dataset: Dataset): FindDocument[] {
  return [
    ...[...dataset.stages.values()].map(ofStage),
    ...[...dataset.failureNotes.values()].map(ofNote),
    ...[...new Set(dataset.tubes.values())].map(ofTube),
    ...[...dataset.cautions.values()].map(ofCaution),
    ...[...dataset.rulesOfThumb.values()].map(ofRule),
    ...dataset.tableTitles.map(({ name, title }): FindDocument => {
      return {
        kind: "table",
        id: name,
        title,
        texts: [`${title}.`],
        use: `read datasets/tables/.../${name}.csv; checks look values up there`,
      };
    }),
  ];
}
