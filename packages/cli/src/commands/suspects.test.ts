import { describe, expect, it } from "vitest";
import { runCli } from "../runCli.ts";

const JOB = "datasets/jobs/tide-hut-transmitter";

/** Runs the command; what it printed and its exit code. */
async function run(...args: string[]): Promise<{ out: string; err: string; code: number }> {
  let [out, err] = ["", ""];
  const code = await runCli(["suspects", ...args], {
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
    columns: 100,
    colour: { out: false, err: false },
  });
  return { out, err, code };
}

describe("underchassis suspects", { timeout: 30_000 }, () => {
  it("names the lead that was never where it belongs", async () => {
    const { out, code } = await run(JOB, "--format", "json");
    const report = JSON.parse(out) as { verdict: string; suspects: { fault: { kind: string; part: string }; posterior: number }[] };
    expect(code).toBe(1);
    expect(report.suspects[0]).toMatchObject({ fault: { kind: "moved-lead", part: "R4" } });
    expect(report.suspects[0]?.posterior).toBeGreaterThan(0.9);
  });

  it("takes odds of one's own: where no lead is ever moved, none is named", async () => {
    const { out } = await run(JOB, "--format", "json", "--odds", "resistor.moved-lead=0");
    const { suspects } = JSON.parse(out) as { suspects: { fault: { kind: string; part: string } }[] };
    expect(suspects.some(({ fault }) => fault.kind === "moved-lead" && /^R/.test(fault.part))).toBe(false);
  });

  it("says which odds there are, and what a weight is", async () => {
    expect(await run(JOB, "--odds", "resistor.opne=4")).toMatchObject({ code: 2, out: "" });
    expect((await run(JOB, "--odds", "resistor.opne=4")).err).toContain("the nearest is resistor.open");
    expect((await run(JOB, "--odds", "resistor.open=much")).err).toContain("0 to 1000");
  });
});
