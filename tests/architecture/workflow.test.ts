/** What the workflows may do to a stranger's pull request, and what the issue forms ask. */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";

interface Step {
  uses?: string;
  run?: string;
  with?: Record<string, unknown>;
  env?: Record<string, string>;
}
interface Job {
  if?: string;
  needs?: string[];
  permissions?: Record<string, string>;
  "timeout-minutes"?: number;
  steps: Step[];
}
interface Workflow {
  on: Record<string, unknown>;
  permissions?: Record<string, string>;
  concurrency?: { group: string; "cancel-in-progress": boolean };
  jobs: Record<string, Job>;
}

const FOLDER = ".github/workflows";
const files = readdirSync(FOLDER);
const read = (file: string) => readFileSync(`${FOLDER}/${file}`, "utf8");

it("there is a workflow", () => expect(files).toEqual(["ci.yml"]));

describe.each(files)("%s", (file) => {
  const text = read(file);
  const workflow = parse(text) as Workflow;
  const jobs = Object.entries(workflow.jobs);
  const steps = jobs.flatMap(([, job]) => job.steps);

  it("reads the repository and may do nothing else", () => {
    expect(workflow.permissions).toEqual({ contents: "read" });
    for (const [name, { permissions = {} }] of jobs) expect(Object.values(permissions), name).not.toContain("write");
    expect(Object.keys(workflow.on)).toEqual(["push", "pull_request"]);
    expect(text).not.toMatch(/secrets\.|pull_request_target|workflow_run|id-token|GITHUB_TOKEN|github\.token/);
  });

  it("pins every action to a commit and says which release that is", () => {
    const uses = [...text.matchAll(/uses:\s*(.*)$/gm)].map(([, what]) => what);
    expect(uses.length).toBe(steps.filter((step) => step.uses !== undefined).length);
    expect(uses.length).toBeGreaterThan(0);
    for (const what of uses) expect(what).toMatch(/^actions\/[a-z-]+@[0-9a-f]{40} # v\d+\.\d+\.\d+$/);
  });

  it("leaves no credentials behind", () => {
    for (const step of steps.filter(({ uses }) => uses?.startsWith("actions/checkout@")))
      expect(step.with?.["persist-credentials"]).toBe(false);
  });

  it("puts nothing that a stranger names into a shell", () => {
    for (const { run } of steps) expect(run ?? "").not.toContain("${{");
    for (const { env = {} } of steps)
      for (const value of Object.values(env)) expect(value).toMatch(/^\$\{\{ (needs\.[a-z]+\.result|github\.event_name) \}\}$/);
  });

  it("ends in time, and gives way to a newer push", () => {
    for (const [name, job] of jobs) expect(job["timeout-minutes"], name).toBeLessThanOrEqual(30);
    expect(workflow.concurrency).toMatchObject({ group: expect.stringContaining("github.ref"), "cancel-in-progress": true });
  });

  it("runs scripts that are there", () => {
    const scripts = steps.flatMap(({ run = "" }) => [...run.matchAll(/tsx (\S+\.ts)/g)].map(([, path]) => path!));
    expect(scripts.length).toBeGreaterThan(0);
    expect(scripts.filter((path) => !existsSync(path))).toEqual([]);
  });

  it("ends with a job that waits for all others and fails when one of them did", () => {
    const [name, last] = jobs.at(-1)!;
    expect(last.if).toBe("always()");
    expect(last.needs).toEqual(jobs.map(([other]) => other).filter((other) => other !== name));
    const script = last.steps.map(({ run = "", env = {} }) => run + Object.values(env).join(" ")).join("\n");
    for (const needed of last.needs ?? []) expect(script).toContain(`needs.${needed}.result`);
  });
});

describe("issue forms", () => {
  const forms = readdirSync(".github/ISSUE_TEMPLATE").filter((name) => name !== "config.yml");
  const TYPES = ["markdown", "input", "textarea", "dropdown", "checkboxes"];

  it("are one for each thing that goes wrong", () => {
    expect(forms.sort()).toEqual(["failure-note.yml", "misgraded-job.yml", "new-template.yml", "program-fault.yml", "wrong-figure.yml"]);
  });

  it.each(forms)("%s is a form that is filled in", (name) => {
    const form = parse(readFileSync(`.github/ISSUE_TEMPLATE/${name}`, "utf8")) as {
      name: string;
      description: string;
      body: {
        type: string;
        id?: string;
        attributes: { label?: string; options?: string[]; value?: string };
        validations?: { required: boolean };
      }[];
    };
    expect(form.name.length * form.description.length).toBeGreaterThan(0);
    const ids = form.body.flatMap(({ id }) => id ?? []);
    expect(new Set(ids).size).toBe(ids.length);
    for (const { type, id, attributes } of form.body) {
      expect(TYPES).toContain(type);
      if (type === "markdown") expect(attributes.value).toBeTruthy();
      else expect([id, attributes.label].every(Boolean), JSON.stringify(attributes)).toBe(true);
    }
    if (name !== "program-fault.yml") expect(form.body.find(({ id }) => id === "source")?.validations?.required).toBe(true);
  });

  it("offers the families that the schema has", () => {
    const { properties } = JSON.parse(readFileSync("schemas/stage.schema.json", "utf8")) as { properties: { family: { enum: string[] } } };
    const form = parse(readFileSync(".github/ISSUE_TEMPLATE/new-template.yml", "utf8")) as {
      body: { id?: string; attributes: { options?: string[] } }[];
    };
    expect(form.body.find(({ id }) => id === "family")?.attributes.options).toEqual(properties.family.enum);
  });
});
