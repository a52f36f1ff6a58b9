/**
 * Stores the demo jobs' reports anew in tests/jobs/golden. Look at the difference before you keep it.
 * Usage: npm run golden
 */
import { writeFileSync } from "node:fs";
import { DEMO_JOBS, goldenPath, goldenText, gradeDemo } from "../tests/jobs/demoReports.ts";

for (const name of DEMO_JOBS) {
  writeFileSync(goldenPath(name), goldenText(gradeDemo(name)));
  console.log(`wrote ${goldenPath(name)}`);
}
