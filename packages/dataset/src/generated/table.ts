// Generated from schemas/table.schema.json; run npm run generate. Changes made here are lost.

/**
 * What the columns of every reference table mean. One entry a CSV file below datasets/tables.
 */
export interface TableDescriptions {
  $schema?: string;
  /**
   * Named lists of texts that several columns choose from, in the order rows are sorted by.
   */
  lists: {
    [k: string]: string[];
  };
  /**
   * A description for every table below datasets/tables.
   */
  tables: TableDescription[];
}
export interface TableDescription {
  /**
   * Path below datasets/tables. The name without folder and ending is unique.
   */
  file: string;
  /**
   * What the table holds.
   */
  title: string;
  /**
   * Columns that tell a row from every other. Rows are sorted by them: numbers and choices rise, texts stand together.
   */
  key: string[];
  /**
   * Every column, in the order of the file.
   */
  columns: ColumnDescription[];
}
export interface ColumnDescription {
  /**
   * Name in the header; of a figure it ends in the unit: ratedVolts.
   */
  name: string;
  /**
   * source: an id of datasets/sources.csv. choice: one of `among`.
   */
  type: "number" | "integer" | "year" | "text" | "choice" | "source";
  /**
   * What stands in it.
   */
  meaning: string;
  /**
   * Unit of its figures: V.
   */
  unit?: string;
  /**
   * The cell may be empty: not known, or no limit.
   */
  optional?: boolean;
  /**
   * What a choice may be: a list, or the name of one of `lists`.
   */
  among?: string | string[];
}
