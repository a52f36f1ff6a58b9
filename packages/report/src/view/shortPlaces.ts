import type { Report } from "@underchassis/dataset";

interface Place {
  file: string;
}

/** "a/b/" of "a/b/job.json"; "" for a bare name. */
const folderOf = (path: string): string => path.slice(0, Math.max(path.lastIndexOf("/"), path.lastIndexOf("\\")) + 1);

/**
 * The report with files named from the folder of its job file, which stands at the head of the sheet: the whole path beside
 * every finding and reading says nothing more.
 */
export function withShortPlaces(report: Report): Report {
  const folder = folderOf(report.job.file);
  const short = (file: string): string => (folder && file.startsWith(folder) ? file.slice(folder.length) : file);
  const placed = <Entry extends { location?: Place }>(entry: Entry): Entry =>
    entry.location ? { ...entry, location: { ...entry.location, file: short(entry.location.file) } } : entry;
  return {
    ...report,
    findings: report.findings.map(placed),
    readings: report.readings.map(placed),
    warnings: report.warnings.map((warning) => (warning.file === undefined ? warning : { ...warning, file: short(warning.file) })),
  };
}
