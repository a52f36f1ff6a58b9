/** The whole comparison on a small git repository: which bump each class of change asks for, and what it does to the recorded job. */
import { mkdirSync, rmSync, symlinkSync } from "node:fs";
import { join } from "node:path";
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";
import { compareWith } from "./compare.ts";
import { runCompare } from "./runCompare.ts";
import { Repository } from "./testing.ts";

let repository: Repository;
const STAGE = "datasets/stages/supply/decoupling-section.json";
const CAUTION = "datasets/cautions/rf-burns.json";

beforeAll(() => {
  repository = new Repository();
});
afterEach(() => repository.restore());
afterAll(() => rmSync(repository.root, { recursive: true, force: true }));

const compared = () => compareWith(repository.root, "HEAD");
// biome-ignore lint/suspicious/noExplicitAny: reaches into any record
type Any = any;
const role = (stage: Any, name: string): Any => stage.parts.find((part: Any) => part.role === name);

it("finds nothing where nothing changed", () => {
  expect(compared()).toMatchObject({ due: "none", changes: [], raisedEnough: true, versionBefore: "1.4.2", jobs: [{ outcome: "same" }] });
});

/** Each class of change: what is done, the bump that the rules of versions ask for, and the property that demands it. */
const CLASSES: readonly [string, () => void, string, string | undefined][] = [
  ["a text", () => repository.change(CAUTION, (record) => (record.title = "Keep one hand away")), "patch", "title"],
  [
    "a source",
    () => repository.change(STAGE, (record) => (role(record, "droppingResistor").source = "restorer-posts")),
    "patch",
    "parts[droppingResistor].source",
  ],
  [
    "a figure that no job feels",
    () => repository.change("datasets/tubes/5y3gt.json", (record) => (record.limits.peakAmps = 0.441)),
    "patch",
    "limits.peakAmps",
  ],
  [
    "a new record",
    () => repository.write("datasets/cautions/new-one.json", { schemaVersion: 1, id: "new-one", title: "New" }),
    "minor",
    undefined,
  ],
  ["an optional property", () => repository.change(CAUTION, (record) => (record.always = true)), "minor", "always"],
  [
    "a new optional terminal",
    () => repository.change(STAGE, (record) => record.terminals.push({ id: "tap", meaning: "A tap.", optional: true })),
    "minor",
    "terminals[tap]",
  ],
  ["a record that is gone", () => rmSync(join(repository.root, "datasets/cautions/radium-dials.json")), "major", undefined],
  ["a renamed id", () => repository.change(CAUTION, (record) => (record.id = "one-hand")), "major", undefined],
  [
    "a role that is gone",
    () => repository.change(STAGE, (record) => (record.parts = record.parts.slice(0, 1))),
    "major",
    "parts[decouplingCapacitor]",
  ],
  [
    "a terminal that must be bound",
    () => repository.change(STAGE, (record) => record.terminals.push({ id: "tap", meaning: "A tap." })),
    "major",
    "terminals[tap]",
  ],
  ["a tube's name that is gone", () => repository.change("datasets/tubes/5y3gt.json", (record) => record.names.pop()), "major", undefined],
  [
    "a table's row that is gone",
    () => repository.edit("datasets/tables/stored-energy.csv", repository.text("datasets/tables/stored-energy.csv").split("\n")[1]!, ""),
    "major",
    undefined,
  ],
  [
    "a schema that asks for more",
    () => repository.change("schemas/caution.schema.json", (schema) => schema.required.push("always")),
    "major",
    "required[always]",
  ],
  [
    "a schema that allows more",
    () => repository.change("schemas/caution.schema.json", (schema) => (schema.properties.note = { type: "string" })),
    "minor",
    "properties.note",
  ],
  [
    "words of a schema",
    () => repository.change("schemas/caution.schema.json", (schema) => (schema.description = "Other words.")),
    "patch",
    "description",
  ],
];

it.each(CLASSES)("asks of %s the bump that is due", (_what, work, bump, path) => {
  work();
  const { due, changes, raisedEnough } = compared();
  expect({ due, first: changes[0]?.bump }).toEqual({ due: bump, first: bump });
  if (path !== undefined) expect(changes.filter((change) => change.bump === bump).map((change) => change.path)).toContain(path);
  expect(raisedEnough).toBe(false);
});

it("names the id that took the place of one that is gone", () => {
  repository.change(CAUTION, (record) => (record.id = "one-hand"));
  expect(compared().changes.find(({ what }) => what === "removed")).toMatchObject({
    id: "rf-burns",
    why: expect.stringContaining('"one-hand" holds the same'),
  });
});

it("takes a tube's name that another tube now has for handed over", () => {
  const tube = "datasets/tubes/5y3gt.json";
  const name = (JSON.parse(repository.text(tube)) as { names: string[] }).names.at(-1)!;
  repository.change(tube, (record) => record.names.pop());
  repository.write("datasets/tubes/heir.json", { ...JSON.parse(repository.text(tube)), id: "heir", names: [name] });
  const { due, changes } = compared();
  expect(due).toBe("minor");
  expect(changes).toContainEqual(
    expect.objectContaining({ path: `names[${name}]`, bump: "minor", why: 'the name now belongs to the tube "heir"' }),
  );
});

describe("recorded jobs", () => {
  // The job's resistor measures 11.2 kohm, marked 10 kohm 10 %: 12 % off.
  it("show the finding that a stricter limit brings, and make it major", () => {
    repository.change(STAGE, (record) => (role(record, "droppingResistor").replace.driftLimit = 0.05));
    const { due, jobs, changes, because } = compared();
    expect(changes).toMatchObject([{ path: "parts[droppingResistor].replace.driftLimit", before: 0.2, after: 0.05, bump: "patch" }]);
    expect(jobs).toMatchObject([{ job: "datasets/jobs/bench", outcome: "different", bump: "major" }]);
    expect(jobs[0]?.change?.findings).toContainEqual(
      expect.objectContaining({
        what: "severity",
        check: "resistor-drift",
        before: "watch",
        after: "replace",
        about: expect.stringContaining("R1"),
      }),
    );
    expect({ due, because }).toEqual({ due: "major", because: "datasets/jobs/bench grades worse" });
  });

  it("that grade no worse by a looser limit ask for a minor bump at most", () => {
    repository.change(STAGE, (record) => (role(record, "droppingResistor").replace.driftLimit = 0.05));
    const strict = repository.commit();
    repository.change(STAGE, (record) => (role(record, "droppingResistor").replace.driftLimit = 0.2));
    const { due, jobs } = compareWith(repository.root, strict);
    expect({ due, outcome: jobs[0]?.outcome }).toEqual({ due: "minor", outcome: "different" });
    repository.git("reset", "--quiet", "--hard", "HEAD~1");
  });

  it("show computed voltages that move", () => {
    // Without a resistor of its own the job takes the typical one: 10 kohm at 5 mA drops 50 V of 300 V, 12 kohm drops 60 V (Ohm's law).
    repository.change("datasets/jobs/bench/job.json", (job) => delete job.stages[0].parts.droppingResistor);
    const earlier = repository.commit();
    repository.change(STAGE, (record) => (role(record, "droppingResistor").typical = "12 kohm 1 W"));
    const moved = compareWith(repository.root, earlier).jobs[0]?.change?.expected.find(
      ({ figure, where }) => figure === "nominal" && where.includes("operating"),
    );
    expect(moved?.before).toBeCloseTo(250, 0);
    expect(moved?.after).toBeCloseTo(240, 0);
    repository.git("reset", "--quiet", "--hard", "HEAD~1");
  });

  it("show the points at which something is newly expected, and those at which nothing is any more", () => {
    const untapped = repository.git("rev-parse", "HEAD");
    repository.change(STAGE, (stage) => {
      const part = { ...role(stage, "droppingResistor"), typical: "100 kohm 1 W" };
      stage.points = { tap: "Middle of a divider." };
      stage.parts.push({ ...part, role: "upper", between: ["decoupled", "tap"] }, { ...part, role: "lower", between: ["tap", "return"] });
      stage.expected.push({ ...stage.expected[0], at: "tap", formula: undefined, low: 100, high: 150 });
    });
    const places = ["tubes-out", "operating"].map((condition) => `first:tap to chassis, dc-volts, ${condition}, restored`);
    expect(compareWith(repository.root, untapped).jobs[0]?.change?.points).toEqual(places.map((where) => ({ what: "added", where })));
    expect(runCompare([untapped], repository.root, 100).out).toContain(`expected newly: ${places[0]}`);
    const tapped = repository.commit();
    repository.git("checkout", "--quiet", untapped, "--", STAGE);
    expect(compareWith(repository.root, tapped).jobs[0]?.change?.points).toEqual(places.map((where) => ({ what: "gone", where })));
    expect(runCompare([tapped], repository.root, 100).out).toContain(`expected no longer: ${places[0]}`);
    repository.git("reset", "--quiet", "--hard", untapped);
  });

  it("that are refused make it major", () => {
    repository.change(STAGE, (record) => (role(record, "droppingResistor").role = "dropResistor"));
    expect(compared().jobs).toMatchObject([
      { outcome: "refused-now", bump: "major", message: expect.stringContaining("droppingResistor") },
    ]);
  });
});

describe("the command", () => {
  const raise = (version: string) => {
    repository.change(CAUTION, (record) => (record.always = true));
    repository.version(version);
    return runCompare(["HEAD"], repository.root, 100);
  };
  it.each([
    ["1.4.2", 1],
    ["1.4.3", 1],
    ["1.5.0", 0],
    ["2.0.0", 0],
    ["1.3.9", 1],
  ])("with version %s over 1.4.2 and a minor change ends with %d", (version, exitCode) => {
    const ran = raise(version);
    expect(ran).toMatchObject({ exitCode, err: "" });
    expect(ran.out).toContain(exitCode === 0 ? "Raised enough." : "Not raised enough: it needs 1.5.0 at least.");
  });

  it("prints JSON and Markdown that say the same", () => {
    repository.change(CAUTION, (record) => (record.title = "One | <b>hand</b>"));
    const json = JSON.parse(runCompare(["HEAD", "--format", "json"], repository.root).out) as { due: string; changes: { path: string }[] };
    expect(json).toMatchObject({ due: "patch", changes: [{ path: "title", after: "One | <b>hand</b>" }] });
    const markdown = runCompare(["HEAD", "--format", "markdown"], repository.root).out;
    expect(markdown).toContain("One \\| \\<b\\>hand\\</b\\>");
    expect(markdown).toContain("One recorded job grades as before.");
  });

  it.each([
    [["--output=x"], "Unknown option"],
    [["--", "--output=x"], "no revision"],
    [["--", "-x"], "no revision"],
    [[], "one revision is needed"],
    [["HEAD", "HEAD"], "one revision is needed"],
    [["HEAD", "--format", "pdf"], 'no format "pdf"'],
    [["no-such-branch"], "no commit is called"],
    [["HEAD:datasets"], "no commit is called"],
  ])("refuses %j", (args, message) => {
    const { exitCode, err, out } = runCompare(args, repository.root);
    expect({ exitCode, out }).toEqual({ exitCode: 2, out: "" });
    expect(err).toContain(message);
  });

  it("takes no link out of a commit", () => {
    mkdirSync(join(repository.root, "datasets/jobs/link"));
    symlinkSync("/etc/hostname", join(repository.root, "datasets/jobs/link/job.json"));
    const commit = repository.commit();
    expect(compareWith(repository.root, commit).jobs.map(({ job }) => job)).toEqual(["datasets/jobs/bench"]);
    repository.git("reset", "--quiet", "--hard", "HEAD~1");
  });

  it("says which file of the working tree cannot be read", () => {
    repository.write(CAUTION, "{ not json");
    expect(runCompare(["HEAD"], repository.root)).toMatchObject({
      exitCode: 2,
      err: expect.stringContaining("datasets/cautions/rf-burns.json"),
    });
  });
});
