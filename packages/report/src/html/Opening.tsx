/** @jsxRuntime automatic @jsxImportSource preact */
import { becauseText } from "../view/becauseText.ts";
import { emptyWords } from "../view/emptyWords.ts";
import { findingHeading } from "../view/findingHeading.ts";
import type { Sheet } from "../view/sheet.ts";
import { levelWords, whenWord } from "../view/words.ts";
import { CautionLinks, findingAnchor } from "./FindingEntry.tsx";
import { Mark } from "./Mark.tsx";
import { Pairs } from "./Pairs.tsx";

/** Cautions: folded on a screen, in full on paper whether or not the browser prints what is folded. */
export function Cautions({ sheet }: { sheet: Sheet }) {
  const because = (reasons: readonly string[]): string => (reasons.length > 0 ? ` Because of: ${becauseText(reasons)}.` : "");
  return (
    <ul class="cautions">
      {sheet.report.cautions.map((caution, index) => (
        <li id={`caution-${index + 1}`} key={caution.id}>
          <details>
            <summary>{caution.title}</summary>
            <p>
              {caution.text}
              {because(caution.because)}
            </p>
          </details>
          <div class="paper">
            <strong>{caution.title}</strong>
            <p>
              {caution.text}
              {because(caution.because)}
            </p>
          </div>
        </li>
      ))}
    </ul>
  );
}

function Holds({ sheet }: { sheet: Sheet }) {
  return (
    <ol>
      {sheet.report.clearance.holds.map((hold, index) => {
        const numbered = sheet.findingAt(hold.finding);
        return (
          <li key={index}>
            <b>{levelWords[hold.step]}:</b> {hold.reason}{" "}
            {numbered && <a href={`#${findingAnchor(numbered.number)}`}>finding {numbered.number}</a>}
          </li>
        );
      })}
    </ol>
  );
}

/** The step that is reached and what holds back the next ones, in the order to clear it. */
export function Clearance({ sheet }: { sheet: Sheet }) {
  const { level, meaning, holds, notMade, steps } = sheet.report.clearance;
  return (
    <>
      <p class="reached">
        Reached: <strong>{levelWords[level]}</strong>. {meaning}
      </p>
      <ol class="steps">
        {steps.map((step) => (
          <li class={step.reached ? "is-reached" : "is-held"} key={step.level}>
            <strong>{levelWords[step.level]}</strong>{" "}
            <em>{step.level === level ? "stands here" : step.reached ? "passed" : "held back"}</em>
            <span>{step.text}</span>
          </li>
        ))}
      </ol>
      <h3>Held back by, in the order to clear it</h3>
      {holds.length === 0 ? <p class="empty">{emptyWords.holds}</p> : <Holds sheet={sheet} />}
      {notMade.length > 0 && (
        <>
          <h3>Could not be checked</h3>
          <ul>
            {notMade.map((text, index) => (
              <li key={index}>{text}</li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}

/** Dangers in short; each leads to its figures. */
export function Dangers({ sheet }: { sheet: Sheet }) {
  if (sheet.dangers.length === 0) return <p class="empty">{emptyWords.dangers}</p>;
  return (
    <ul class="dangers">
      {sheet.dangers.map(({ number, finding }) => (
        <li key={number}>
          <p>
            <Mark severity="danger" /> <b>{findingHeading(finding)}</b> <a href={`#${findingAnchor(number)}`}>finding {number}</a>
          </p>
          <Pairs
            pairs={[
              ["found", finding.found],
              ["should be", finding.shouldBe],
              ["do", finding.action],
            ]}
          />
        </li>
      ))}
    </ul>
  );
}

/** What to do at the bench, in order. */
export function Next({ sheet }: { sheet: Sheet }) {
  if (sheet.report.next.length === 0) return <p class="empty">{emptyWords.next}</p>;
  return (
    <ol class="next">
      {sheet.report.next.map(({ action, why, expect, cautions, step }, index) => (
        <li key={index}>
          <b>{action}</b>
          <Pairs
            pairs={[
              ["when", step && whenWord(step, sheet.report.clearance.level)],
              ["why", why],
              ["expect", expect],
              ["caution", cautions.length > 0 && <CautionLinks ids={cautions} sheet={sheet} />],
            ]}
          />
        </li>
      ))}
    </ol>
  );
}
