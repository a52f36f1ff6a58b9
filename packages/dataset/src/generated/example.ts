// Generated from schemas/example.schema.json; run npm run generate. Changes made here are lost.

/**
 * What the two example jobs of a stage template must come to when they are graded: one in which nothing is wrong, one with a fault of the stage.
 */
export interface ExampleRecord {
  $schema?: string;
  /**
   * Grade of nominal/job.json, in which nothing is wrong.
   */
  nominal: {
    /**
     * Clearance that the report gives.
     */
    clearance: "none" | "current-limited" | "full-line" | "service";
    /**
     * Gravest finding: nothing is wrong, so nothing worse than watch.
     */
    worst: "good" | "watch";
  };
  /**
   * Grade of fault/job.json, which has a fault of the stage.
   */
  fault: {
    /**
     * Findings that the example is about; others may stand beside them.
     *
     * Items: One finding.
     */
    finds: {
      /**
       * Id of the check that makes it.
       */
      check: string;
      /**
       * Name of the part, point or stage that it is about, as the job calls it.
       */
      part: string;
      /**
       * How grave it is.
       */
      severity: "danger" | "replace" | "adjust" | "watch";
      /**
       * Words of its title, where a check finds more than one thing.
       */
      title?: string;
    }[];
  };
}
