/** @jsxRuntime automatic @jsxImportSource preact */
import type { ComponentChildren } from "preact";
import { type WordTable, withoutEmptyColumns } from "../view/wordTable.ts";

interface Props {
  table: WordTable;
  caption: string;
  /** What stands instead of a table without rows. */
  empty: string;
  /** Marks the table for the style sheet. */
  kind?: string;
  /** Sets a cell otherwise than as its plain text; `row` counts the rows of `table`. */
  cell?: (column: string, text: string, row: number) => ComponentChildren;
}

/** Values stay on one line; a cell in a narrow column would otherwise be broken between number and unit. */
const shortest = 10;
const cellClass = (text: string): string | undefined => (text === "" ? "blank" : text.length <= shortest ? "short" : undefined);

/**
 * A table that a narrow screen may stack cell over cell. Roles are written out because browsers drop a table's meaning
 * once its cells are laid out as blocks.
 */
export function Table({ table, caption, empty, kind, cell }: Props) {
  if (table.rows.length === 0) return <p class="empty">{empty}</p>;
  const { head, rows } = withoutEmptyColumns(table);
  return (
    // biome-ignore-start lint/a11y: the roles are the native ones, kept for stacked layout
    <table role="table" class={kind}>
      <caption>{caption}</caption>
      <thead role="rowgroup">
        <tr role="row">
          {head.map((title) => (
            <th role="columnheader" scope="col" key={title}>
              {title}
            </th>
          ))}
        </tr>
      </thead>
      <tbody role="rowgroup">
        {rows.map((row, number) => (
          <tr role="row" key={number}>
            {row.map((text, column) => {
              const title = head[column] ?? "";
              const content = cell ? cell(title, text, number) : text;
              return column === 0 ? (
                <th role="rowheader" scope="row" data-label={title} class={cellClass(text)} key={title}>
                  {content}
                </th>
              ) : (
                <td role="cell" data-label={title} class={cellClass(text)} key={title}>
                  {content}
                </td>
              );
            })}
          </tr>
        ))}
      </tbody>
    </table>
    // biome-ignore-end lint/a11y: the roles are the native ones, kept for stacked layout
  );
}
