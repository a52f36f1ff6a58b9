/** What `npm run new` writes: every blank told, refused while it is blank, and sound once it is filled in. */
import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { loadDataset } from "@underchassis/dataset/load";
import { buildModel, gradeJob } from "@underchassis/grading";
import { Ajv2020, type ValidateFunction } from "ajv/dist/2020.js";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { templateRequirements } from "../../packages/grading/src/checks/templates/template-requirements.ts";
import { templateJob } from "../../packages/grading/src/circuit/templateJob.ts";
import { diskSource } from "../../packages/validation/src/node/diskSource.ts";
import { allRules } from "../../packages/validation/src/rules/allRules.ts";
import { blankFilled } from "../../packages/validation/src/rules/bytes/blank-filled.ts";
import { grader } from "../../packages/validation/src/run/validateAll.ts";
import { validateFiles } from "../../packages/validation/src/run/validateFiles.ts";
import { format } from "../generate/format.ts";
import { FILL } from "./blank.ts";
import { blanksIn } from "./blanksIn.ts";
import { exampleFiles } from "./exampleFiles.ts";
import { runNew } from "./runNew.ts";
import { withSource } from "./sourceRow.ts";

let root = "";
beforeAll(() => {
  root = mkdtempSync(join(tmpdir(), "underchassis-new-"));
  for (const folder of ["datasets", "schemas"]) cpSync(folder, join(root, folder), { recursive: true });
});
afterAll(() => rmSync(root, { recursive: true, force: true }));

const ajv = new Ajv2020({ allErrors: true, strict: false });
const schemas = new Map<string, ValidateFunction>();
function errorsOf(schema: string, record: unknown): string[] {
  const validate = schemas.get(schema) ?? ajv.compile(JSON.parse(readFileSync(`schemas/${schema}.schema.json`, "utf8")) as object);
  schemas.set(schema, validate);
  validate(record);
  return (validate.errors ?? []).map(({ instancePath, message }) => `${instancePath} ${message}`);
}

/** A record with the value of each pointer in place of its blank. */
function filled(text: string, values: Readonly<Record<string, unknown>>): Record<string, unknown> {
  expect(Object.keys(values).sort()).toEqual(
    blanksIn(text)
      .map(({ pointer }) => pointer)
      .sort(),
  );
  const record = JSON.parse(text) as Record<string, unknown>;
  for (const [pointer, value] of Object.entries(values)) {
    const path = pointer.slice(1).split("/");
    const last = path.pop()!;
    (path.reduce<unknown>((held, step) => (held as Record<string, unknown>)[step], record) as Record<string, unknown>)[last] = value;
  }
  return record;
}

const CASES: readonly { args: string[]; path: string; schema: string; values: Record<string, unknown> }[] = [
  {
    args: ["stage", "made-up-load", "--family", "supply", "--title", "Made-up load"],
    path: "stages/supply/made-up-load.json",
    schema: "stage",
    values: {
      "/summary": "A resistor that loads a supply, for a test.",
      "/terminals/0/id": "feed",
      "/terminals/0/meaning": "Positive side.",
      "/parts/0/role": "loadResistor",
      "/parts/0/title": "Load resistor",
      "/parts/0/kind": "resistor",
      "/parts/0/between/0": "feed",
      "/parts/0/between/1": "return",
      "/parts/0/typical": "10 kohm 10 W",
      "/parts/0/duty": "bleeder",
      "/parts/0/measure/0": "resistance",
      "/parts/0/ages": "Opens.",
      "/parts/0/replace/rule": "More than 20 % off.",
      "/parts/0/replace/source": "common-practice",
      "/parts/0/substitute/text": "Same value.",
      "/parts/0/substitute/source": "common-practice",
      "/parts/0/source": "common-practice",
      "/typical/parts/0/kind": "battery",
      "/typical/parts/0/between/0": "feed",
      "/typical/parts/0/between/1": "return",
      "/typical/parts/0/value": "200 V",
      "/expected/0/title": "Feed",
      "/expected/0/at": "feed",
      "/expected/0/to": "return",
      "/expected/0/quantity": "dc-volts",
      "/expected/0/condition": "operating",
      "/expected/0/low": 190,
      "/expected/0/high": 210,
      "/expected/0/source": "common-practice",
      "/requirements/0/id": "rating",
      "/requirements/0/title": "The resistor stays cool",
      "/requirements/0/formula": "loadResistor.ratedWatts >= 2 * loadResistor.watts",
      "/requirements/0/otherwise": "It burns.",
      "/requirements/0/severity": "replace",
      "/requirements/0/action": "Fit a larger one.",
      "/requirements/0/source": "common-practice",
      "/cautions/0": "one-hand-rule",
      "/sources/0": "common-practice",
    },
  },
  {
    args: ["failure", "made-up-failure", "--title", "Made up", "--part-kind", "resistor"],
    path: "failure-notes/made-up-failure.json",
    schema: "failure-note",
    values: {
      "/roles/0": "plateLoad",
      "/mechanism": "Heat.",
      "/symptom/text": "Silence.",
      "/symptom/quantity": "dc-volts",
      "/symptom/direction": "low",
      "/measurement/text": "Ohms, one end lifted.",
      "/measurement/quantity": "resistance",
      "/measurement/limit": "20 %",
      "/cure": "A new one.",
      "/cautions/0": "one-hand-rule",
      "/frequency": "rare",
      "/fault/kind": "open",
      "/fault/weight": 5,
      "/sources/0": "common-practice",
    },
  },
  {
    args: ["tube", "9zz9", "--title", "Made-up triode", "--class", "triode"],
    path: "tubes/9zz9.json",
    schema: "tube",
    values: {
      "/base/code": "9A",
      "/base/socket": "noval 9-pin",
      "/base/source": "common-practice",
      "/heater/volts": 6.3,
      "/heater/amps": 0.3,
      "/heater/heating": "indirect",
      "/heater/source": "common-practice",
      ...Object.fromEntries(["plate", "grid", "cathode", "heater", "heater"].map((name, index) => [`/base/pins/${index + 1}`, name])),
      "/limits/system": "unknown",
      "/limits/plateVolts": 300,
      "/limits/plateWatts": 2.5,
      "/limits/cathodeAmps": 0.02,
      "/limits/gridOhmsCathodeBias": 1000000,
      "/limits/source": "common-practice",
      "/typical/0/service": "class A amplifier",
      "/typical/0/plateVolts": 250,
      "/typical/0/gridVolts": -8,
      "/typical/0/plateAmps": 0.009,
      "/typical/0/siemens": 0.0026,
      "/typical/0/source": "common-practice",
    },
  },
  {
    args: ["tube", "9yy9", "--title", "Made-up rectifier", "--class", "rectifier"],
    path: "tubes/9yy9.json",
    schema: "tube",
    values: {
      "/base/code": "5T",
      "/base/socket": "octal",
      ...Object.fromEntries(["plate-1", "plate-2", "cathode", "heater", "heater"].map((name, index) => [`/base/pins/${index + 1}`, name])),
      "/base/source": "common-practice",
      "/heater/volts": 5,
      "/heater/amps": 2,
      "/heater/heating": "indirect",
      "/heater/source": "common-practice",
      "/limits/system": "unknown",
      "/limits/peakInverseVolts": 1400,
      "/limits/dcAmps": 0.125,
      "/limits/peakAmps": 0.4,
      "/limits/rmsVoltsCapacitorInput": 350,
      "/limits/maxInputFarads": 0.00002,
      "/limits/minSupplyOhms": 50,
      "/limits/source": "common-practice",
      "/units/0/parameters/perveance": 0.00035,
      "/units/0/source": "common-practice",
      "/typical/0/service": "drop of one plate",
      "/typical/0/dropVolts": 50,
      "/typical/0/dropAmps": 0.125,
      "/typical/0/source": "common-practice",
    },
  },
  {
    args: ["caution", "made-up-hazard"],
    path: "cautions/made-up-hazard.json",
    schema: "caution",
    values: { "/title": "Made up", "/text": "Something hot can burn a hand.", "/rank": 5, "/sources/0": "common-practice" },
  },
  {
    args: ["rule-of-thumb", "made-up-rule", "--title", "Made-up rule"],
    path: "rules-of-thumb/made-up-rule.json",
    schema: "rule-of-thumb",
    values: {
      "/statement": "A resistor is loaded with half of what it is rated for.",
      "/figures/0/what": "share of the rating",
      "/figures/0/value": 0.5,
      "/figures/0/unit": "ratio",
      "/figures/0/source": "common-practice",
      "/appliesTo/partKinds/0": "resistor",
      "/limits": "In free air.",
      "/cautions/0": "one-hand-rule",
      "/sources/0": "common-practice",
    },
  },
  {
    args: ["job", "made-up-set", "--title", "Made-up set"],
    path: "jobs/made-up-set/job.json",
    schema: "job",
    values: {
      "/chassis/description": "Nothing.",
      "/chassis/era": 1950,
      "/chassis/assembly": "kit",
      "/chassis/line/designVolts": "117 V",
      "/chassis/line/hertz": 60,
      "/chassis/line/actualVolts": "120 V",
      "/stages/0/id": "first",
      "/stages/0/template": "made-up-load",
      "/parts/0/name": "BT1",
      "/parts/0/kind": "battery",
      "/parts/0/between/0": "first:feed",
      "/parts/0/between/1": "chassis",
      "/parts/0/marked": "200 V",
      "/readings/0/at": "first:feed",
      "/readings/0/quantity": "dc-volts",
      "/readings/0/value": "200 V",
    },
  },
];

const written = new Map<string, string>();
const made = new Map<string, Record<string, unknown>>();

describe.each(CASES.map((given) => [given.args[0]!, given] as const))("%s", (_kind, { args, path, schema, values }) => {
  it("is written where it belongs, and every blank is told with its line and what belongs there", () => {
    const { exitCode, out, err } = runNew(args, root);
    expect({ exitCode, err }).toEqual({ exitCode: 0, err: "" });
    const text = readFileSync(join(root, "datasets", path), "utf8");
    written.set(path, text);
    const lines = text.split("\n");
    const blanks = blanksIn(text);
    expect(blanks.length).toBe(text.split(`"${FILL}`).length - 1);
    for (const { pointer, line, what } of blanks) {
      expect(lines[line - 1], pointer).toContain(`"${FILL}`);
      expect(out).toContain(`datasets/${path}:${line}  ${pointer}  ${what}`);
      expect(what.length, pointer).toBeGreaterThan(3);
    }
  });

  it("has its properties in the schema's order", () => {
    const { properties } = JSON.parse(readFileSync(`schemas/${schema}.schema.json`, "utf8")) as { properties: object };
    const own = Object.keys(JSON.parse(written.get(path)!) as object);
    expect(own).toEqual(Object.keys(properties).filter((name) => own.includes(name)));
  });

  it("is sound once its blanks are filled in, and lacks nothing but them", () => {
    const record = filled(written.get(path)!, values);
    expect(errorsOf(schema, record)).toEqual([]);
    made.set(path, record);
  });

  it("is told from a finished one by every single blank", () => {
    for (const pointer of Object.keys(values)) {
      const { [pointer]: _, ...rest } = values;
      const text = written.get(path)!;
      const partly = JSON.stringify(filled(text, { ...rest, [pointer]: `${FILL}still` }));
      expect(blanksIn(partly).map((blank) => blank.pointer)).toEqual([pointer]);
    }
  });
});

describe("the validator", () => {
  const about = (path: string, codes?: readonly string[]) =>
    validateFiles(diskSource(root), { rules: allRules, only: (file) => file === `datasets/${path}` }).diagnostics.filter(
      ({ code }) => codes === undefined || codes.includes(code),
    );

  it.each(CASES.map(({ path }) => path))("names every blank of %s", (path) => {
    const blanks = blanksIn(written.get(path)!).map(({ line }) => line);
    expect(about(path, [blankFilled.code]).map(({ line }) => line)).toEqual(blanks);
    // What the words of a blank break besides is nobody's matter.
    const others = about(path).filter(({ code, line }) => code !== blankFilled.code && blanks.includes(line ?? 0));
    expect(others).toEqual([]);
  });

  it("has nothing against the records once they are filled in", () => {
    for (const [path, record] of made)
      writeFileSync(join(root, "datasets", path), format(JSON.stringify(record, null, 2), `datasets/${path}`));
    const told = CASES.filter(({ schema }) => schema !== "job").flatMap(({ path }) => about(path));
    // Of a triode the model is still to be fitted, and the validator says how.
    const [fit, ...others] = told;
    expect(fit).toMatchObject({ code: "UC-426", file: "datasets/tubes/9zz9.json", help: expect.stringContaining("fit-tubes.ts 9zz9") });
    expect(others.map(({ code, file, line, message }) => `${code} ${file}:${line} ${message}`)).toEqual([]);
  });
});

describe("a filled stage", () => {
  const dataset = () => {
    const template = made.get("stages/supply/made-up-load.json") as never as Parameters<typeof templateJob>[0];
    return { template, all: { ...loadDataset(), stages: new Map([[template.id, template]]) } };
  };

  it("simulates, and keeps its own requirement", () => {
    const { template, all } = dataset();
    const built = buildModel({ job: { name: "job.json", text: JSON.stringify(templateJob(template)) } }, all);
    if (!built.ok) throw new Error(built.diagnostics.map(({ message }) => message).join("\n"));
    const prediction = built.model.predict(
      { life: "designed", condition: "operating", line: "design" },
      { quantity: "dc-volts", at: "feed", to: "chassis" },
    );
    expect(prediction?.nominal).toBeCloseTo(200, 1);
    // 200 V across 10 kohm is 4 W of 10 W.
    expect(templateRequirements.run(built.model).map(({ severity }) => severity)).toEqual(["good"]);
  });

  it("serves the filled job", () => {
    // Which terminals there are to bind hangs on the template: the reader of jobs asks for each by name.
    const job = made.get("jobs/made-up-set/job.json") as { stages: { bind: object }[] };
    job.stages[0]!.bind = { feed: "B+" };
    const text = JSON.stringify(job).replaceAll('"first:feed"', '"B+"');
    const graded = gradeJob({ job: { name: "job.json", text } }, dataset().all, {
      toolVersion: "0.0.0",
    });
    if (!graded.ok) throw new Error(graded.diagnostics.map(({ message }) => message).join("\n"));
    expect(graded.report.readings).toMatchObject([{ measured: 200, verdict: "within" }]);
  });
});

describe("a job with a template", () => {
  const begun = (id: string, template: string) => {
    const ran = runNew(["job", id, "--template", template], root);
    const path = join(root, `datasets/jobs/${id}/job.json`);
    const text = existsSync(path) ? readFileSync(path, "utf8") : undefined;
    rmSync(join(root, `datasets/jobs/${id}`), { recursive: true, force: true });
    return { ...ran, text };
  };

  it("binds the terminals that have a point, and names the others as blanks", () => {
    const { out, text = "" } = begun("made-up-bound", "decoupling-section");
    const { stages } = JSON.parse(text) as { stages: { template: string; bind: Record<string, string> }[] };
    const template = JSON.parse(readFileSync("datasets/stages/supply/decoupling-section.json", "utf8")) as {
      terminals: { id: string; meaning: string; default?: string }[];
    };
    expect(stages[0]?.template).toBe("decoupling-section");
    expect(stages[0]?.bind).toEqual(
      Object.fromEntries(
        template.terminals.map(({ id, meaning, default: point }) => [id, point ?? `${FILL}point of the chassis: ${meaning}`]),
      ),
    );
    expect(out).toMatch(/job\.json:\d+ {2}\/stages\/0\/bind\/supply {2}point of the chassis: /);
    expect(out).not.toContain("bind is empty");
  });

  it("that there is none of is not begun", () => {
    expect(begun("made-up-lost", "decoupling-sektion")).toMatchObject({
      exitCode: 2,
      err: expect.stringContaining("the nearest is decoupling-section"),
      text: undefined,
    });
  });

  it("and without one says what is missing", () => {
    expect(runNew(["job", "made-up-open"], root).out).toContain("bind is empty: --template T");
    rmSync(join(root, "datasets/jobs/made-up-open"), { recursive: true });
  });
});

describe("an example", () => {
  const folder = "datasets/examples/decoupling-section";
  const FILES = ["nominal/job.json", "fault/job.json", "expected.json"];
  const measured = "/stages/0/parts/decouplingCapacitor/measured";
  const job = (capacitor: { value: string; esr: string }, volts: string) => ({
    "/chassis/description": "Resistor and capacitor after a bench supply.",
    "/chassis/era": 1950,
    "/stages/0/parts/droppingResistor/measured/value": "10.1 kohm",
    [`${measured}/value`]: capacitor.value,
    [`${measured}/esr`]: capacitor.esr,
    [`${measured}/leakage`]: "10 uA",
    [`${measured}/atVolts`]: "450 V",
    "/readings/0/value": volts,
  });
  const VALUES: Readonly<Record<string, Record<string, unknown>>> = {
    "nominal/job.json": job({ value: "10 uF", esr: "1.9 ohm" }, "249 V"),
    "fault/job.json": job({ value: "0.9 uF", esr: "210 ohm" }, "249 V"),
    "expected.json": {
      "/nominal/clearance": "service",
      "/nominal/worst": "watch",
      "/fault/finds/0/check": "electrolytic-condition",
      "/fault/finds/0/part": "C1",
      "/fault/finds/0/severity": "replace",
    },
  };
  const textOf = (name: string) => readFileSync(join(root, folder, name), "utf8");

  it("is two jobs and their record, every blank told with its line", () => {
    rmSync(join(root, folder), { recursive: true });
    const { exitCode, out, err } = runNew(["example", "decoupling-section"], root);
    expect({ exitCode, err }).toEqual({ exitCode: 0, err: "" });
    expect(out).toContain(`npx underchassis grade ${folder}/nominal`);
    for (const name of FILES) {
      expect(out).toContain(`wrote ${folder}/${name}\n`);
      for (const { pointer, line, what } of blanksIn(textOf(name))) expect(out).toContain(`${folder}/${name}:${line}  ${pointer}  ${what}`);
    }
  });

  it("comes, filled in, to what its record says, and nothing is wrong with it", () => {
    for (const name of FILES) {
      const path = `${folder}/${name}`;
      writeFileSync(join(root, path), format(JSON.stringify(filled(textOf(name), VALUES[name]!), null, 2), path));
    }
    const { diagnostics } = validateFiles(diskSource(root), {
      rules: allRules,
      electrical: true,
      grader,
      only: (file) => file.startsWith(folder),
    });
    expect(diagnostics.map(({ code, file, line, message, received }) => `${code} ${file}:${line} ${message} ${received ?? ""}`)).toEqual(
      [],
    );
  });

  it("waits for the template's own blanks", () => {
    runNew(["stage", "made-up-blank", "--family", "supply"], root);
    expect(runNew(["example", "made-up-blank"], root)).toMatchObject({
      exitCode: 2,
      err: expect.stringMatching(/has \d+ blanks to be filled in first/),
    });
    rmSync(join(root, "datasets/stages/supply/made-up-blank.json"));
  });

  it("is refused where one stands, or where there is no such template", () => {
    expect(runNew(["example", "decoupling-section"], root)).toMatchObject({
      exitCode: 2,
      err: expect.stringContaining("not written over"),
    });
    expect(runNew(["example", "decoupling-sektion"], root)).toMatchObject({
      exitCode: 2,
      err: expect.stringContaining("the nearest is decoupling-section"),
    });
    expect(existsSync(join(root, "datasets/examples/decoupling-sektion"))).toBe(false);
  });

  it.each([...loadDataset().stages])("of %s fits the schemas but for its blanks", (_id, template) => {
    const record = JSON.parse(readFileSync("schemas/example.schema.json", "utf8")) as Parameters<typeof exampleFiles>[1];
    const jobs = exampleFiles(template, record).filter(({ name }) => name.endsWith("/job.json"));
    expect(jobs.map(({ name }) => name)).toEqual(["nominal/job.json", "fault/job.json"]);
    for (const { record: job } of jobs) {
      expect(blanksIn(JSON.stringify(job)).map(({ pointer }) => pointer)).toContain("/chassis/era");
      expect(errorsOf("job", job).filter((error) => !error.startsWith("/chassis/era"))).toEqual([]);
    }
  });
});

describe("a source", () => {
  const header = "id,kind,title,detail\n";
  it("goes where its id belongs; other rows stay as they are, line breaks in quotes and all", () => {
    const before = `${header}a-one,published,"One, ""quoted""",x\nc-three,published,"Three\nlines",y\n`;
    const { text, line } = withSource(before, "b-two", { kind: "derived", title: "Two, too", detail: "" });
    expect(text).toBe(`${header}a-one,published,"One, ""quoted""",x\nb-two,derived,"Two, too",\nc-three,published,"Three\nlines",y\n`);
    expect(line).toBe(3);
    expect(withSource(before, "z-last", { kind: "derived", title: "T", detail: "d" })).toEqual({
      text: `${before}z-last,derived,T,d\n`,
      line: 5,
    });
  });

  it("is written into the table, which stays sorted and loads", () => {
    const { exitCode, out } = runNew(["source", "made-up-book", "--title", "A book", "--source-kind", "published"], root);
    expect({ exitCode, out }).toEqual({
      exitCode: 0,
      out: expect.stringMatching(/1 blanks to fill in: datasets\/sources.csv:\d+, detail/),
    });
    expect(loadDataset(join(root, "datasets")).sources.get("made-up-book")).toMatchObject({
      title: "A book",
      detail: expect.stringContaining(FILL),
    });
    const ids = readFileSync(join(root, "datasets/sources.csv"), "utf8")
      .split("\n")
      .slice(1)
      .filter(Boolean)
      .map((row) => row.split(",")[0]);
    expect(ids).toEqual(ids.toSorted());
  });
});

describe("refuses", () => {
  const state = () => readdirSync(join(root, "datasets"), { recursive: true, encoding: "utf8" }).sort();
  it.each([
    [["stage", "Half_Wave", "--family", "supply"], "perhaps half-wave"],
    [["stage", "decoupling-section", "--family", "supply"], "taken by datasets/stages/supply/decoupling-section.json"],
    [["stage", "decoupling-section", "--family", "audio"], "taken by datasets/stages/supply/decoupling-section.json"],
    [["stage", "new-one", "--family", "suply"], "the nearest is supply"],
    [["stage", "new-one"], "--family line|supply"],
    [["tube", "ecc83"], "taken by datasets/tubes/12ax7.json"],
    [["failure", "x", "--part-kind", "resitor"], "the nearest is resistor"],
    [["source", "common-practice"], "taken by datasets/sources.csv"],
    [["source", "new-one", "--source-kind", "rumour"], "is none of published"],
    [["job", "tide-hut-transmitter"], "taken by datasets/jobs/tide-hut-transmitter"],
    [["caution", "../../outside"], "is no id"],
    [["caution", `a${"-a".repeat(40)}`], "at most 64"],
    [["sorce", "x"], "the nearest is source"],
    [["stage"], "a kind and an id are needed"],
    [["stage", "x", "--colour", "red"], "colour"],
  ])("%j", (args, message) => {
    const before = state();
    const { exitCode, out, err } = runNew(args, root);
    expect({ exitCode, out }).toEqual({ exitCode: 2, out: "" });
    expect(err).toContain(message);
    expect(state()).toEqual(before);
  });

  it("to write over a file that says it is something else", () => {
    mkdirSync(join(root, "datasets/cautions"), { recursive: true });
    cpSync(join(root, "datasets/cautions/rf-burns.json"), join(root, "datasets/cautions/other-name.json"));
    const { exitCode, err } = runNew(["caution", "other-name"], root);
    expect({ exitCode, err }).toEqual({ exitCode: 2, err: expect.stringContaining("other-name.json") });
    expect(existsSync(join(root, "datasets/cautions/other-name.json"))).toBe(true);
  });
});
