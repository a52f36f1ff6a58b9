import { describe, expect, it } from "vitest";
import { emptyReport } from "../testing/emptyReport.ts";
import { fixtureReport } from "../testing/fixtureReport.ts";
import { hostileReport, hostileTexts } from "../testing/hostileReport.ts";
import { type ScannedElement, scanHtml } from "../testing/scanHtml.ts";
import { emptyWords } from "../view/emptyWords.ts";
import { sectionTitles } from "../view/sectionTitles.ts";
import { renderHtml } from "./renderHtml.tsx";

const html = renderHtml(fixtureReport);
const elements = scanHtml(html);
const named = (name: string, from: readonly ScannedElement[] = elements): ScannedElement[] =>
  from.filter((element) => element.name === name);
const withId = (id: string): ScannedElement | undefined => elements.find((element) => element.attributes.get("id") === id);

describe("scanHtml", () => {
  it.each(["<p>a", "<p><b>a</p></b>", "<p title=a>b</p>", "<p>a & b</p>", "a < b", '<p title="a" title="b">c</p>'])(
    "refuses %s",
    (text) => {
      expect(() => scanHtml(text)).toThrow();
    },
  );
});

describe("renderHtml", () => {
  it("has language, title, policy and no other way out", () => {
    expect(html.startsWith("<!doctype html>\n")).toBe(true);
    expect(named("html")[0]?.attributes.get("lang")).toBe("en");
    expect(named("title")[0]?.text).toBe("Lighthouse six-tube receiver: chassis sheet");
    const policy = named("meta").find((meta) => meta.attributes.get("http-equiv") === "Content-Security-Policy");
    expect(policy?.attributes.get("content")).toContain("default-src 'none'; style-src 'unsafe-inline'");
    for (const name of ["script", "link", "img", "iframe", "object", "embed", "form", "base"]) expect(named(name)).toStrictEqual([]);
    for (const element of elements) {
      for (const [name, value] of element.attributes) {
        expect(name).not.toMatch(/^on|^style$|^src|^action$/);
        if (name === "href") expect(value).toMatch(/^#[a-z0-9-]+$/);
      }
    }
    expect(named("style")[0]?.text).not.toMatch(/url\(|@import|:\/\//);
  });

  it("has one first heading and never skips a level", () => {
    const levels = elements.filter((element) => /^h[1-6]$/.test(element.name)).map((element) => Number(element.name[1]));
    expect(levels.filter((level) => level === 1)).toHaveLength(1);
    expect(levels[0]).toBe(1);
    levels.slice(1).forEach((level, index) => {
      expect(level).toBeLessThanOrEqual((levels[index] ?? 0) + 1);
    });
    expect(named("h2").map((heading) => heading.text)).toStrictEqual(Object.values(sectionTitles));
  });

  it("prints every finding with its words and figures once", () => {
    fixtureReport.findings.forEach((finding, index) => {
      const text = withId(`finding-${index + 1}`)?.text ?? "";
      for (const part of [finding.title, finding.found, finding.shouldBe, finding.why, finding.action]) expect(text).toContain(part);
      for (const figure of finding.figures) for (const part of [figure.label, figure.how]) expect(text).toContain(part);
    });
    expect(named("article")).toHaveLength(fixtureReport.findings.length);
  });

  it("says the severity of every finding in words", () => {
    const words = named("article").map((article) => /^\d+\. (danger|replace|adjust|watch|not measured|good) /.exec(article.text)?.[1]);
    expect(words).toStrictEqual(["danger", "good", "replace", "adjust", "danger", "not measured"]);
  });

  it("leads every link to something on the page and gives no id twice", () => {
    const ids = elements.flatMap((element) => element.attributes.get("id") ?? []);
    expect(new Set(ids).size).toBe(ids.length);
    const targets = named("a").map((link) => link.attributes.get("href")?.slice(1) ?? "");
    expect(targets.length).toBeGreaterThan(20);
    for (const target of targets) expect(ids).toContain(target);
  });

  it("gives every table a caption, scopes and labels", () => {
    const tables = named("table").length;
    expect(tables).toBeGreaterThan(10);
    expect(named("caption")).toHaveLength(tables);
    for (const head of named("th")) expect(head.attributes.get("scope")).toMatch(/^(col|row)$/);
    for (const cell of named("td")) expect(cell.attributes.get("data-label")).toBeTruthy();
  });

  it("draws a chart with words for every reading with a window, and a bar for every reading of a suspect", () => {
    const charts = named("svg");
    const bars = fixtureReport.suspects?.suspects.flatMap(({ readings }) => readings).length ?? 0;
    expect(charts).toHaveLength(fixtureReport.readings.filter((reading) => reading.verdict !== "not-computed").length + bars);
    expect(charts[0]?.attributes.get("aria-label")).toBe("measured 258\u00a0V, window 247\u00a0V to 281\u00a0V, within");
    for (const chart of charts) expect(chart.attributes.get("role")).toBe("img");
    expect(html).not.toContain("NaN");
  });

  it("holds each caution in full, folded and for paper", () => {
    for (const [index, caution] of fixtureReport.cautions.entries()) {
      const text = withId(`caution-${index + 1}`)?.text ?? "";
      expect(text.split(caution.text)).toHaveLength(3);
    }
  });

  it("gives each thing to order a box with a name", () => {
    const boxes = named("input");
    expect(boxes.map((box) => box.attributes.get("aria-label"))).toStrictEqual(fixtureReport.order.map((item) => `ordered: ${item.what}`));
  });

  it("has no list without entries", () => {
    for (const report of [fixtureReport, emptyReport]) expect(renderHtml(report)).not.toMatch(/<(ul|ol|dl|tbody)[^>]*><\//);
  });

  it("says why a section is empty", () => {
    const text = scanHtml(renderHtml(emptyReport)).find((element) => element.name === "main")?.text ?? "";
    for (const key of [
      "holds",
      "dangers",
      "next",
      "stages",
      "readings",
      "expected",
      "changes",
      "order",
      "checksMade",
      "checksNotMade",
      "sources",
    ] as const) {
      expect(text).toContain(emptyWords[key]);
    }
  });

  it("turns hostile text into text and nothing else", () => {
    const page = renderHtml(hostileReport);
    const hostile = scanHtml(page);
    const shape = (from: readonly ScannedElement[]): string[] =>
      from.map((element) => `${element.name} ${[...element.attributes.keys()].join(" ")}`);
    // Blank cells differ: a field that was empty is not. Compare kinds of elements and attributes, not their number.
    expect([...new Set(shape(hostile))].sort()).toStrictEqual([...new Set(shape(elements))].sort());
    const text = hostile.find((element) => element.name === "main")?.text ?? "";
    for (const key of ["script", "attribute", "image", "address", "table", "mention", "entity", "ending", "long", "wide"] as const)
      expect(text.includes(hostileTexts[key]), key).toBe(true);
    expect(/[\p{Cc}\p{Cf}\p{Cs}]/u.exec(page.replaceAll("\n", ""))).toBeNull();
  });

  it("uses no word of assurance", () => {
    expect(html).not.toMatch(/\bsafe/i);
  });
});
