/** @jsxRuntime automatic @jsxImportSource preact */
import type { ComponentType } from "preact";
import { headFacts } from "../view/headFacts.ts";
import { type SectionKey, sectionTitles } from "../view/sectionTitles.ts";
import type { Sheet } from "../view/sheet.ts";
import { Changes, Checks, Expected, Order, Remarks, Sources } from "./Closing.tsx";
import { Cautions, Clearance, Dangers, Next } from "./Opening.tsx";
import { Pairs } from "./Pairs.tsx";
import { Readings } from "./Readings.tsx";
import { Stages } from "./Stages.tsx";
import { Suspects } from "./Suspects.tsx";

const sections: Readonly<Record<SectionKey, ComponentType<{ sheet: Sheet }>>> = {
  cautions: Cautions,
  clearance: Clearance,
  dangers: Dangers,
  next: Next,
  stages: Stages,
  readings: Readings,
  suspects: Suspects,
  expected: Expected,
  changes: Changes,
  order: Order,
  checks: Checks,
  remarks: Remarks,
  sources: Sources,
};

/** Body of the page: head, list of sections, sections in the order of `sectionTitles`. */
export function Page({ sheet }: { sheet: Sheet }) {
  const keys = (Object.keys(sectionTitles) as SectionKey[]).filter(
    (key) => (key !== "remarks" || sheet.report.warnings.length > 0) && (key !== "suspects" || sheet.report.suspects !== undefined),
  );
  return (
    <>
      <header>
        <p class="kicker">Chassis sheet</p>
        <h1>{sheet.report.job.title}</h1>
        <Pairs pairs={headFacts(sheet.report)} />
        <nav aria-label="Sections">
          <ul>
            {keys.map((key) => (
              <li key={key}>
                <a href={`#${key}`}>{sectionTitles[key]}</a>
              </li>
            ))}
          </ul>
        </nav>
      </header>
      <main>
        {keys.map((key) => {
          const Section = sections[key];
          return (
            <section class="block" id={key} aria-labelledby={`${key}-title`} key={key}>
              <h2 id={`${key}-title`}>{sectionTitles[key]}</h2>
              <div class="content">
                <Section sheet={sheet} />
              </div>
            </section>
          );
        })}
      </main>
    </>
  );
}
