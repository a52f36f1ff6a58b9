/** Titles of the sections, in the order in which every renderer prints them. */
export const sectionTitles = {
  cautions: "Cautions",
  dangers: "Dangers",
  clearance: "Clearance",
  next: "Next at the bench",
  stages: "Stage by stage",
  readings: "Readings against computed values",
  suspects: "Suspects",
  expected: "Expected voltages",
  changes: "Before and after",
  order: "To order",
  checks: "Checks",
  remarks: "Remarks on the job files",
  sources: "Sources",
} as const;

export type SectionKey = keyof typeof sectionTitles;
