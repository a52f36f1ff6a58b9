export type { JobFiles, LoadedJob, Path } from "./loadedJob.ts";
export { type LoadResult, loadJob } from "./loadJob.ts";
