/** @jsxRuntime automatic @jsxImportSource preact */
import { emptyWords } from "../view/emptyWords.ts";
import { settingWords } from "../view/settingWords.ts";
import type { NumberedFinding, Sheet } from "../view/sheet.ts";
import { partTable } from "../view/tables.ts";
import { FindingEntry } from "./FindingEntry.tsx";
import { Mark } from "./Mark.tsx";
import { Table } from "./Table.tsx";

type Stage = Sheet["report"]["stages"][number];

/** Findings to act on in full; those that found nothing amiss folded below them. */
function Findings({ findings, sheet }: { findings: readonly NumberedFinding[]; sheet: Sheet }) {
  const amiss = findings.filter(({ finding }) => finding.severity !== "good");
  const good = findings.filter(({ finding }) => finding.severity === "good");
  return (
    <>
      {findings.length === 0 && <p class="empty">{emptyWords.findings}</p>}
      {amiss.map((numbered) => (
        <FindingEntry numbered={numbered} sheet={sheet} key={numbered.number} />
      ))}
      {good.length > 0 && (
        <details class="good-findings">
          <summary>
            Looked at with nothing amiss: {good.length} ({good.map(({ finding }) => finding.title).join("; ")})
          </summary>
          {good.map((numbered) => (
            <FindingEntry numbered={numbered} sheet={sheet} key={numbered.number} />
          ))}
        </details>
      )}
    </>
  );
}

function StageBlock({ stage, sheet }: { stage: Stage; sheet: Sheet }) {
  return (
    <section class="stage">
      <h3>
        {stage.title}{" "}
        <small>
          {stage.id}
          {stage.template ? `, template ${stage.template}` : ""}
        </small>
      </h3>
      {stage.summary && <p>{stage.summary}</p>}
      {stage.settings && <p>{settingWords(stage.settings)}</p>}
      <Table
        kind="parts"
        caption={`Parts of ${stage.title}`}
        empty={emptyWords.parts}
        table={partTable(stage.parts)}
        cell={(column, text, row) => {
          const part = stage.parts[row];
          return column === "verdict" && part ? <Mark severity={part.severity} /> : text;
        }}
      />
      <Findings findings={sheet.findingsAt(stage.findings)} sheet={sheet} />
    </section>
  );
}

/** Each stage with parts and findings; then the findings that belong to no stage. */
export function Stages({ sheet }: { sheet: Sheet }) {
  const { stages } = sheet.report;
  return (
    <>
      {stages.length === 0 && <p class="empty">{emptyWords.stages}</p>}
      {stages.map((stage) => (
        <StageBlock stage={stage} sheet={sheet} key={stage.id} />
      ))}
      {sheet.loose.length > 0 && (
        <section class="stage">
          <h3>The chassis as a whole</h3>
          <Findings findings={sheet.loose} sheet={sheet} />
        </section>
      )}
    </>
  );
}
