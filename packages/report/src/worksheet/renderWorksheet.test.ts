import type { Worksheet } from "@underchassis/grading";
import { describe, expect, it } from "vitest";
import { textWidth } from "../text/wrapText.ts";
import { renderWorkTable } from "./worksheetCsv.ts";
import { renderWorksheetHtml } from "./worksheetHtml.tsx";
import { renderWorksheetMarkdown } from "./worksheetMarkdown.ts";
import { renderWorksheetText } from "./worksheetText.ts";

const EVIL = '<img src=x onerror=alert(1)> | `x` \u001b[31m\u202e "q" & @everyone';

const sheet = (word = "Filter"): Worksheet => ({
  title: `${word} sheet`,
  datasetVersion: "1.2.3",
  cautions: [{ id: "a", title: "Stored charge", text: "Discharge it first." }],
  conditions: [
    { id: "cold", title: "cold, unplugged", powered: false },
    { id: "operating", title: "operating, no signal", powered: true },
  ],
  stages: [
    {
      id: "supply",
      title: `${word} stage`,
      template: "supply",
      summary: `${word} summary.`,
      cautions: [{ id: "b", title: "Bursting cans", text: "Eye protection." }],
      parts: [
        {
          role: "reservoir",
          name: "C1",
          title: `${word} capacitor`,
          kind: "capacitor",
          between: "supply:input - chassis",
          optional: false,
          typical: "20 uF 450 V",
          measures: [{ quantity: "capacitance", how: "one lead lifted, discharged", low: 16e-6, high: 24e-6, unit: "F" }],
          replace: "Below 80 %.",
          sources: ["common-practice"],
        },
        { name: "", title: "Bleeder", kind: "resistor", between: "a - b", optional: true, marked: "47k", measures: [], sources: [] },
      ],
      points: [
        { condition: "cold", at: "B+", to: "chassis", quantity: "ohms", low: 40e3, high: 54e3, source: "computed" },
        {
          condition: "operating",
          at: "B+",
          to: "chassis",
          quantity: "dc-volts",
          title: "Full load",
          low: 290,
          high: 345,
          source: "common-practice",
        },
        { condition: "operating", at: "C1", to: "chassis", quantity: "dc-amps", source: "common-practice" },
      ],
    },
  ],
});

const RENDERERS = {
  text: (given: Worksheet) => renderWorksheetText(given, 180),
  markdown: renderWorksheetMarkdown,
  html: renderWorksheetHtml,
};

describe.each(Object.entries(RENDERERS))("as %s", (format, render) => {
  const output = render(sheet()).replaceAll("\u00a0", " ");
  it("says cautions before parts, parts before readings, cold before hot", () => {
    const order = [
      "Discharge it first.",
      "Eye protection.",
      "20 uF",
      "cold, unplugged",
      "40 kohm to 54 kohm",
      "operating, no signal",
      "290 V to 345 V",
    ];
    const flat = output.replace(/<title>.*<\/title>/, "").replace(/\s+/g, " ");
    const places = order.map((word) => flat.indexOf(word));
    expect(places.includes(-1), `${order[places.indexOf(-1)]}`).toBe(false);
    expect(places).toEqual(places.toSorted((a, b) => a - b));
  });
  it("has a blank for what was marked, measured, fitted and read", () => {
    const blanks = output.match(format === "html" ? /<span class="fill"><\/span>/g : /_{8}|(\\_){8}/g) ?? [];
    // Four at the head; three for the capacitor, one for the bleeder, whose marking is known and which is not measured; read cold, read and line twice hot.
    expect(blanks).toHaveLength(4 + 3 + 1 + 1 + 4);
  });
  it("names limits, methods and sources", () => {
    for (const word of ["16 uF", "24 uF", "one lead lifted, discharged", "not in every chassis"])
      expect(output.replace(/\s+/g, " "), word).toContain(word);
    expect(output).toContain("common-practice");
    expect(output).toContain("1.2.3");
  });
  it("lets no text of a job obeyed or hidden", () => {
    const hostile = render(sheet(EVIL));
    expect(hostile).not.toContain("\u001b");
    expect(hostile).not.toContain("\u202e");
    if (format !== "text") expect(hostile).not.toMatch(/(?<!\\)<img/);
    if (format === "markdown") expect(hostile).not.toMatch(/@everyone/);
  });
  it("calls nothing safe", () => expect(output).not.toMatch(/\bsafe/i));
});

it("keeps text within its width", () => {
  for (const line of renderWorksheetText(sheet(), 100).split("\n")) expect(textWidth(line)).toBeLessThanOrEqual(100);
});

it("is a page for A4 paper that fetches and runs nothing", () => {
  const html = renderWorksheetHtml(sheet());
  expect(html).toContain("size: A4");
  expect(html).toContain("default-src 'none'");
  expect(html).not.toMatch(/<script|https?:\/\/|\son\w+=/);
});

describe("renderWorkTable", () => {
  it("quotes what needs it (RFC 4180)", () => {
    expect(renderWorkTable({ head: ["a", "b"], rows: [{ a: '1, "2"', b: "x\ny" }, { b: "plain" }] })).toBe(
      'a,b\n"1, ""2""","x\ny"\n,plain\n',
    );
  });
});
