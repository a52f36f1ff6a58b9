import { describe, expect, it } from "vitest";
import { escapeMarkdown } from "./escapeMarkdown.ts";

// Escapes: GitHub Flavored Markdown specification 0.29, sections 6.1 (backslash escapes), 6.9 (autolinks), 4.10 (tables).
describe("escapeMarkdown", () => {
  it.each([
    ["C1 47 uF, -5.4 V + 0.2 V", "C1 47 uF, -5.4 V + 0.2 V"],
    ["*em* _em_ `code` ~~gone~~ $x$", "\\*em\\* \\_em\\_ \\`code\\` \\~\\~gone\\~\\~ \\$x\\$"],
    ["<b>&amp;", "\\<b\\>&amp;amp;"],
    ["a|b\\", "a\\|b\\\\"],
    ["![x](y)", "!\\[x\\](y)"],
    ["https://example.invalid www.example.invalid", "https\\://example.invalid www\\.example.invalid"],
    ["@someone a@b.c", "@<!-- -->someone a@<!-- -->b.c"],
    ["issue #12 GH-7", "issue #<!-- -->12 GH-<!-- -->7"],
    [":tada: :+1: 3:14:9 12:30", ":<!-- -->tada: :<!-- -->+1: 3:14:9 12:30"],
    ["# head", "\\# head"],
    ["- item", "\\- item"],
    ["---", "\\---"],
    ["1. item", "1\\. item"],
    ["10) item", "10\\) item"],
    ["1.5 V", "1.5 V"],
    ["> quote", "\\> quote"],
  ])("%s", (given, shown) => {
    expect(escapeMarkdown(given)).toBe(shown);
  });
});
