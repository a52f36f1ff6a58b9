/** @jsxRuntime automatic @jsxImportSource preact */
import type { ComponentChildren } from "preact";
import { figureParts } from "../view/figureParts.ts";
import { findingHeading } from "../view/findingHeading.ts";
import { findingPairs } from "../view/findingPairs.ts";
import type { NumberedFinding, Sheet } from "../view/sheet.ts";
import { Mark } from "./Mark.tsx";
import { Pairs } from "./Pairs.tsx";
import { SourceLink } from "./SourceLink.tsx";
import { Table } from "./Table.tsx";

/** Anchor of a finding, by the number that the sheet calls it by. */
export const findingAnchor = (number: number): string => `finding-${number}`;

/** Cautions by title, each leading to its entry at the top. */
export function CautionLinks({ ids, sheet }: { ids: readonly string[]; sheet: Sheet }) {
  return (
    <>
      {ids.map((id, index) => {
        const place = sheet.report.cautions.findIndex((caution) => caution.id === id);
        return (
          <span key={id}>
            {index > 0 ? "; " : ""}
            {place < 0 ? id : <a href={`#caution-${place + 1}`}>{sheet.cautionTitle(id)}</a>}
          </span>
        );
      })}
    </>
  );
}

function FigureTable({ finding, sheet }: { finding: NumberedFinding["finding"]; sheet: Sheet }) {
  const figures = finding.figures.map(figureParts);
  const rows = figures.map((parts) => [parts.label, parts.value, parts.window, parts.limit, parts.margin, parts.how, parts.source]);
  return (
    <Table
      kind="figures"
      caption="Figures"
      empty=""
      table={{ head: ["figure", "value", "window", "limit", "margin", "how", "source"], rows }}
      cell={(column, text) => (column === "source" ? <SourceLink id={text} sheet={sheet} /> : text)}
    />
  );
}

/** A finding with everything behind it. */
export function FindingEntry({ numbered, sheet }: { numbered: NumberedFinding; sheet: Sheet }) {
  const { number, finding } = numbered;
  const pairs = findingPairs(finding, sheet).map(([label, text]): [string, ComponentChildren] => {
    if (label === "caution") return [label, <CautionLinks ids={finding.cautions} sheet={sheet} key={label} />];
    if (label === "sources")
      return [label, finding.sources.map((id, index) => [index > 0 ? ", " : "", <SourceLink id={id} sheet={sheet} key={id} />])];
    return [label, text];
  });
  return (
    <article id={findingAnchor(number)} class={`finding ${finding.severity}`}>
      <h4>
        {number}. <Mark severity={finding.severity} /> {findingHeading(finding)}
      </h4>
      <Pairs pairs={pairs} />
      {finding.figures.length > 0 && <FigureTable finding={finding} sheet={sheet} />}
    </article>
  );
}
