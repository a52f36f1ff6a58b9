// Generated from schemas/caution.schema.json; run npm run generate. Changes made here are lost.

/**
 * A hazard of the bench and what to do about it, in words that a report prints.
 */
export interface CautionRecord {
  $schema?: string;
  schemaVersion: 1;
  id: string;
  title: string;
  /**
   * What can hurt whom, and the precaution. Never calls anything safe; defers to local codes and licensed practice where mains wiring is concerned.
   */
  text: string;
  /**
   * 1 is printed first.
   */
  rank: number;
  /**
   * Printed on every report.
   */
  always?: boolean;
  sources: string[];
}
