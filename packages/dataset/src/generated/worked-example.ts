// Generated from schemas/worked-example.schema.json; run npm run generate. Changes made here are lost.

/**
 * Worked examples of one subject, printed ones where there are any. The calculator is held against each of them.
 */
export interface WorkedExampleFile {
  $schema?: string;
  schemaVersion: 1;
  /**
   * The file's name without its ending.
   */
  id: string;
  /**
   * What the examples of this file are about.
   */
  title: string;
  /**
   * Worked examples of handbooks and standards.
   */
  examples: WorkedExample[];
}
/**
 * One result of one worked example.
 */
export interface WorkedExample {
  /**
   * Unique over all files.
   */
  id: string;
  /**
   * What is worked out.
   */
  title: string;
  /**
   * The formula that it works.
   */
  formula: string;
  /**
   * Where the example is printed.
   */
  source: WorkedExampleSource;
  /**
   * Arguments by name, as printed, with their units; a list where the formula takes one.
   */
  inputs: {
    [k: string]: string | string[];
  };
  /**
   * Which result of the formula.
   */
  output: string;
  /**
   * The number as printed, right or wrong.
   */
  result: string;
  /**
   * Unit of the result; empty for a bare number.
   */
  unit: string;
  /**
   * How far the result may lie from the printed one, and why.
   */
  tolerance: WorkedExampleTolerance;
  /**
   * The exact value to six digits in the same unit, computed independently; held to six digits.
   */
  recomputed?: string;
  /**
   * What the print should say, where it is wrong.
   */
  erratum?: WorkedExampleErratum;
  /**
   * What the figures do not say.
   */
  note?: string;
}
export interface WorkedExampleSource {
  /**
   * Title of the published work.
   */
  work: string;
  /**
   * Edition or year of the work.
   */
  edition?: string;
  /**
   * Chapter, page, example, question.
   */
  place: string;
  /**
   * Where it can be read.
   */
  url?: string;
  /**
   * checked: the printed text was read. transcription: read in somebody's working of it. memory: recalled, confirm before quoting. derived: printed nowhere, our own independent solution.
   */
  status: "checked" | "transcription" | "memory" | "derived";
}
export interface WorkedExampleTolerance {
  /**
   * In the unit of the result.
   */
  absolute: number;
  /**
   * Why it is as wide as that: printed digits, a rounded constant.
   */
  why: string;
}
/**
 * The printed result is wrong: it must lie outside the tolerance, this value inside.
 */
export interface WorkedExampleErratum {
  /**
   * The right value.
   */
  value: string;
  /**
   * How it is known that the print is wrong.
   */
  why: string;
}
