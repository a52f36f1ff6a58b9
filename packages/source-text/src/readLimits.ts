/** How much of a file is read, and what the file is called when it holds more. */
export interface ReadLimits {
  /** What is being read, as a noun: job, record, table. */
  noun: string;
  /** Largest file, in bytes. */
  bytes: number;
  /** Deepest nesting of brackets. */
  depth: number;
  /** Most tokens of a JSON file: brackets, commas, colons, values. */
  tokens: number;
  /** Most entries of one list or object. */
  members: number;
  /** Most commas and line ends of a table. */
  marks: number;
  /** Most rows of a table. */
  rows: number;
}
