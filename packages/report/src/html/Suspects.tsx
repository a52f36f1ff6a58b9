/** @jsxRuntime automatic @jsxImportSource preact */
import type { Suspect, SuspectReport } from "@underchassis/grading";
import { BAR_SPAN } from "../suspects/suspectBar.ts";
import { groupWords, nextTable, suspectTable } from "../suspects/suspectTable.ts";
import { beliefWords, placeWords, priorWords, verdictWords } from "../suspects/suspectWords.ts";
import { formatValue } from "../view/formatValue.ts";
import type { Sheet } from "../view/sheet.ts";
import { commonReturn } from "../view/shortWords.ts";
import { Table } from "./Table.tsx";

const width = 160;

/** The prediction in the middle, two standard deviations as the bar, the reading as a mark: a diamond within, a cross outside. */
function Bar({ deviation }: { deviation: number }) {
  const at = (value: number) => (width * (Math.max(-BAR_SPAN, Math.min(BAR_SPAN, value)) + BAR_SPAN)) / (2 * BAR_SPAN);
  const x = at(deviation);
  const within = Math.abs(deviation) <= 2;
  const label = within
    ? "as this suspect predicts"
    : `${Math.abs(deviation).toFixed(1)} standard deviations ${deviation > 0 ? "above" : "below"}`;
  const mark = within ? `M${x} 3 L${x + 5} 10 L${x} 17 L${x - 5} 10 Z` : `M${x - 5} 4 L${x + 5} 16 M${x + 5} 4 L${x - 5} 16`;
  return (
    <svg viewBox={`-8 0 ${width + 16} 20`} role="img" aria-label={label} class="chart">
      <rect class="window" x={at(-2)} y="5" width={at(2) - at(-2)} height="10" />
      <path class="nominal" d={`M${width / 2} 3 V17`} />
      <path class={within ? "measured" : "measured line"} d={mark} />
    </svg>
  );
}

function Entry({ suspect, reference }: { suspect: Suspect; reference: string }) {
  const { rank, title, second, posterior, prior, group, hazard, confirm, readings } = suspect;
  return (
    <div class="suspect">
      <h3>
        {rank}. {title}
        {second !== undefined && <>, and {second.title}</>}
      </h3>
      <p>
        Belief {beliefWords(posterior)} ({priorWords(prior)} before the readings).
      </p>
      {group.length > 0 && <p>No reading tells it from: {groupWords(group)}</p>}
      {hazard !== undefined && (
        <p>
          <b>Danger:</b> if so, {hazard.at} carries {formatValue(hazard.volts, "V")}, which must not be there.
        </p>
      )}
      <p>
        <b>Make sure:</b> {confirm}
      </p>
      <Table
        kind="readings"
        caption={`Readings under suspect ${rank}`}
        empty=""
        table={suspectTable(suspect, reference)}
        cell={(column, text, row) => (column === "read against" ? <Bar deviation={readings[row]?.deviation ?? 0} /> : text)}
      />
    </div>
  );
}

/** The search for a cause: suspects, each with its readings, and what to measure next. */
export function Suspects({ sheet }: { sheet: Sheet }) {
  if (sheet.report.suspects === undefined) return null;
  const report = sheet.report.suspects as unknown as SuspectReport;
  const reference = commonReturn(sheet.report.readings);
  const { coldOnly, next } = report;
  return (
    <>
      <p>{verdictWords(report)}</p>
      {report.suspects.length > 0 && (
        <p>
          Bars: the suspect's prediction in the middle, two standard deviations to either side. Diamond: the reading, within. Cross: the
          reading, outside; at the edge where it lies beyond four.
        </p>
      )}
      {report.suspects.map((suspect) => (
        <Entry suspect={suspect} reference={reference} key={suspect.rank} />
      ))}
      {coldOnly !== undefined && (
        <p>
          <b>No power:</b> if "{coldOnly.title}" is true, {coldOnly.at} carries {formatValue(coldOnly.volts, "V")}. Measure cold until that
          is ruled out.
        </p>
      )}
      {next !== undefined && (
        <div class="suspect">
          <h3>Measure next</h3>
          <p>
            {placeWords(next, reference)}: {next.why}.
          </p>
          <Table kind="plain" caption="What it will show" empty="" table={nextTable(next)} />
          <ul>
            {next.cautions.map((id) => (
              <li key={id}>{sheet.cautionTitle(id)}</li>
            ))}
          </ul>
        </div>
      )}
    </>
  );
}
