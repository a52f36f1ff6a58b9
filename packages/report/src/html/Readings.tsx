/** @jsxRuntime automatic @jsxImportSource preact */
import type { ReportReadingLine } from "@underchassis/dataset";
import { emptyWords } from "../view/emptyWords.ts";
import { readingParts } from "../view/readingParts.ts";
import type { Sheet } from "../view/sheet.ts";
import { readingRemark } from "../view/tables.ts";
import { ReadingChart } from "./ReadingChart.tsx";
import { Table } from "./Table.tsx";

/** A cell with what belongs to it in small print: the circumstance under the place, the difference under the verdict. */
function ReadingCell({ column, text, reading }: { column: string; text: string; reading: ReportReadingLine }) {
  if (column === "chart") return <ReadingChart reading={reading} />;
  const { circumstance, off } = readingParts(reading);
  const small = column === "reading" ? circumstance : column === "verdict" ? off : "";
  return (
    <span>
      {text}
      {small && <small>{small}</small>}
    </span>
  );
}

/** Readings as a chart whose rows are the rows of a table, so that neither can be seen without the other. */
export function Readings({ sheet }: { sheet: Sheet }) {
  const { readings } = sheet.report;
  if (readings.length === 0) return <p class="empty">{emptyWords.readings}</p>;
  const remarks = readings
    .map((reading) => ({ place: readingParts(reading).place, remark: readingRemark(reading) }))
    .filter(({ remark }) => remark);
  const table = {
    head: ["reading", "measured", "computed", "window", "published", "verdict", "chart"],
    rows: readings
      .map(readingParts)
      .map((parts) => [parts.place, parts.measured, parts.computed, parts.window, parts.published, parts.verdict, "chart"]),
  };
  return (
    <>
      <figure>
        <figcaption>
          Each reading has its own scale, drawn so that all windows stand in one column. Bar: computed window. Thin bar below: published
          range. Upright line: computed value. Diamond: measured, within the window. Cross: measured, outside. Arrowhead at the edge:
          measured beyond the scale.
        </figcaption>
        <Table
          kind="readings"
          caption="Readings, computed windows and published ranges"
          empty={emptyWords.readings}
          table={table}
          cell={(column, text, row) => {
            const reading = readings[row];
            return reading ? <ReadingCell column={column} text={text} reading={reading} /> : text;
          }}
        />
      </figure>
      {remarks.length > 0 && (
        <ul class="remarks">
          {remarks.map(({ place, remark }, index) => (
            <li key={index}>
              <b>{place}:</b> {remark}
            </li>
          ))}
        </ul>
      )}
    </>
  );
}
