/** A small git repository with one stage, one recorded job and its schemas, for tests. */
import { spawnSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";

const JOB = {
  format: 1,
  title: "A stage on the bench",
  chassis: { era: 1950, line: { designVolts: "117 V", hertz: 60, actualVolts: "120 V" } },
  stages: [
    {
      id: "first",
      template: "decoupling-section",
      bind: { supply: "B+", decoupled: "B+ first" },
      parts: {
        droppingResistor: { name: "R1", marked: "10k 1W 10%", measured: { value: "11.2k" } },
        decouplingCapacitor: { name: "C1", marked: "10 uF 450 V", measured: { value: "10.5 uF", leakage: "20 uA", esr: "2 ohm" } },
      },
    },
  ],
  parts: [
    { name: "BT", kind: "battery", between: ["B+", "chassis"], marked: "300 V" },
    { name: "LOAD", kind: "load", between: ["B+ first", "chassis"], marked: "5 mA" },
  ],
};

/** Properties that do not matter here stay away from the user's own git settings. */
const ENVIRONMENT = { PATH: process.env.PATH, GIT_CONFIG_GLOBAL: "/dev/null", GIT_CONFIG_NOSYSTEM: "1", HOME: tmpdir() };

export class Repository {
  readonly root = mkdtempSync(join(tmpdir(), "underchassis-repository-"));

  constructor() {
    for (const path of ["stages/supply/decoupling-section.json", "sources.csv", "cautions", "failure-notes", "tables"])
      cpSync(`datasets/${path}`, join(this.root, "datasets", path), { recursive: true });
    mkdirSync(join(this.root, "datasets/tubes"), { recursive: true });
    cpSync("datasets/tubes/5y3gt.json", join(this.root, "datasets/tubes/5y3gt.json"));
    cpSync("schemas", join(this.root, "schemas"), { recursive: true });
    this.write("datasets/manifest.json", { datasetVersion: "1.4.2", schemaVersions: {} });
    this.write("datasets/jobs/bench/job.json", JOB);
    this.git("init", "--quiet");
    this.commit();
  }

  git(...args: string[]): string {
    const done = spawnSync("git", args, { cwd: this.root, encoding: "utf8", env: ENVIRONMENT });
    if (done.status !== 0) throw new Error(done.stderr);
    return done.stdout.trim();
  }

  commit(): string {
    this.git("add", "--all");
    this.git("-c", "user.name=bench", "-c", "user.email=bench@example.invalid", "commit", "--quiet", "--message", "state");
    return this.git("rev-parse", "HEAD");
  }

  write(path: string, content: unknown): void {
    mkdirSync(dirname(join(this.root, path)), { recursive: true });
    writeFileSync(join(this.root, path), typeof content === "string" ? content : `${JSON.stringify(content, null, 2)}\n`);
  }

  text(path: string): string {
    return readFileSync(join(this.root, path), "utf8");
  }

  /** Replaces a text that stands in a file exactly once. */
  edit(path: string, from: string, to: string): void {
    const text = this.text(path);
    if (text.split(from).length !== 2) throw new Error(`"${from}" does not stand once in ${path}`);
    this.write(
      path,
      text.replace(from, () => to),
    );
  }

  /** Changes a JSON file in place. */
  // biome-ignore lint/suspicious/noExplicitAny: a test reaches into any record
  change(path: string, work: (record: any) => void): void {
    const record = JSON.parse(this.text(path)) as unknown;
    work(record);
    this.write(path, record);
  }

  version(version: string): void {
    this.write("datasets/manifest.json", { datasetVersion: version, schemaVersions: {} });
  }

  /** The working tree as it was committed. */
  restore(): void {
    this.git("checkout", "--quiet", "--", ".");
    this.git("clean", "--quiet", "--force", "-d");
  }
}
