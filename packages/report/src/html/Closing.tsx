/** @jsxRuntime automatic @jsxImportSource preact */
import { emptyWords } from "../view/emptyWords.ts";
import type { Sheet } from "../view/sheet.ts";
import { changeSentence, checkTable, effectTable, expectedTable, orderTable, sourceTable, warningSentence } from "../view/tables.ts";
import { sourceAnchor } from "./SourceLink.tsx";
import { Table } from "./Table.tsx";

export function Expected({ sheet }: { sheet: Sheet }) {
  return (
    <Table kind="expected" caption="What the chassis as it stands should read" empty={emptyWords.expected} table={expectedTable(sheet)} />
  );
}

/** Each change with its computed effects. */
export function Changes({ sheet }: { sheet: Sheet }) {
  const { changes } = sheet.report;
  if (changes.length === 0) return <p class="empty">{emptyWords.changes}</p>;
  return (
    <>
      {changes.map((change, index) => (
        <section class="change" key={index}>
          <h3>{changeSentence(change)}</h3>
          {change.why && <p>Why: {change.why}</p>}
          <Table kind="effects" caption={`Effects at ${change.part}`} empty={emptyWords.effects} table={effectTable(change, sheet)} />
        </section>
      ))}
    </>
  );
}

/** What to order, with boxes to tick on paper or, until the page is closed, on the screen. */
export function Order({ sheet }: { sheet: Sheet }) {
  const { head, rows } = orderTable(sheet);
  return (
    <Table
      kind="order"
      caption="Parts to order"
      empty={emptyWords.order}
      table={{ head: [...head, "ordered"], rows: rows.map((row) => [...row, "box"]) }}
      cell={(column, text, row) =>
        column === "ordered" ? <input type="checkbox" aria-label={`ordered: ${rows[row]?.[1] ?? ""}`} /> : text
      }
    />
  );
}

/** Checks that were made, and those that were not with what they lack. */
export function Checks({ sheet }: { sheet: Sheet }) {
  return (
    <>
      <h3>Made</h3>
      <Table kind="checks" caption="Checks made" empty={emptyWords.checksMade} table={checkTable(sheet.checksMade)} />
      <h3>Not made</h3>
      <Table kind="checks" caption="Checks not made" empty={emptyWords.checksNotMade} table={checkTable(sheet.checksNotMade)} />
    </>
  );
}

export function Remarks({ sheet }: { sheet: Sheet }) {
  return (
    <ul>
      {sheet.report.warnings.map((warning, index) => (
        <li key={index}>{warningSentence(warning)}</li>
      ))}
    </ul>
  );
}

export function Sources({ sheet }: { sheet: Sheet }) {
  return (
    <Table
      kind="sources"
      caption="Sources of figures and limits"
      empty={emptyWords.sources}
      table={sourceTable(sheet)}
      cell={(column, text, row) => (column === "source" ? <span id={sourceAnchor(row)}>{text}</span> : text)}
    />
  );
}
