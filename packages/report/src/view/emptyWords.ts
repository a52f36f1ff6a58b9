/** What an empty section says instead of standing blank: each one why, and what would fill it. */
export const emptyWords = {
  holds: "Nothing that was checked holds back the next step.",
  dangers: "No check that could be made found a danger. Checks that could not be made are listed under Checks.",
  next: "No work at the bench follows from the findings.",
  stages: "The job names no stage: add stages to job.json to have parts judged in their place.",
  parts: "No part of this stage is recorded.",
  findings: "No check had anything to say about this stage.",
  readings: "The job holds no reading: measured values in readings.csv are compared with computed ones here.",
  expected: "No voltage was computed: the job describes no powered circuit that could be solved.",
  changes: "The job records no part as replaced, added, removed or moved, and none as planned.",
  effects: "No computed figure depends on this change.",
  order: "No finding asks for a part.",
  checksMade: "No check could be made with what the job records.",
  checksNotMade: "Every check that applies could be made.",
  sources: "No figure in this report rests on a source.",
} as const;
