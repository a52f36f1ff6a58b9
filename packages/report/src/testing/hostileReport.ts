import type { Report } from "@underchassis/dataset";
import { fixtureReport } from "./fixtureReport.ts";

/** Everything that a text from a stranger may try on a page, a terminal, a Markdown viewer. For tests only. */
export const hostileTexts = {
  script: `<script>alert("x")</script>`,
  attribute: `" onmouseover='alert(1)' x="`,
  image: "![x](https://example.invalid/x.png) <img src=https://example.invalid/x.png onerror=alert(1)>",
  address: "https://example.invalid/a?b=1&c=2 www.example.invalid",
  direction: "A\u202EGNP.C1\u202C \u2067x\u2069",
  terminal: "\u001b[31mred\u001b[0m \u001b]0;title\u0007 \u009b1m",
  table: "a|b\\|c `code` ``two`` | end\\",
  mention: "@someone and @org/team, issue #12, GH-7, :tada:",
  markup: "# head\n- list\n> quote *em* _em_ ~~gone~~ [link](javascript:alert(1)) $x$",
  entity: "&lt;b&gt; &#60; &amp;",
  ending: "</title></style></textarea>--><!--]]>",
  lone: "\ud800 half",
  long: "verylongname".repeat(40),
  wide: "\u771f\u7a7a\u7ba1 e\u0301",
} as const;

const all = Object.values(hostileTexts).join(" ");

/** Fields that hold words of the job or of the dataset, not one of a closed list. */
const free = new Set(
  "title file description text meaning reason notMade notes because found shouldBe label how why action what for name between marked measured fitted summary point to at condition part meter note contributors from limitSource expect message area template unit".split(
    " ",
  ),
);
/** Fields whose name is free in one place and closed in another keep their value there. */
const closed = new Set(["replaced", "added", "removed", "moved"]);

function spoiled(value: unknown, key: string): unknown {
  if (typeof value === "string") return free.has(key) && !closed.has(value) ? `${value} ${all}` : value;
  if (Array.isArray(value)) return value.map((entry) => spoiled(entry, key));
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, entry]) => [name, spoiled(entry, name)]));
}

/** The fixture with every hostile text in every free field. */
export const hostileReport = spoiled(fixtureReport, "") as Report;
