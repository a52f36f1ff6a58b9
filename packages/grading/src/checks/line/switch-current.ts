import type { Check, Finding } from "../../model/index.ts";
import { atLeast, atMost } from "../shared/figure.ts";
import { livesTouching } from "../shared/layout.ts";
import { lineCurrent } from "../shared/lineCurrent.ts";
import { lineSide, nominalVolts } from "../shared/lineSide.ts";
import { good, report } from "../shared/report.ts";
import { switchOn } from "../shared/switchOn.ts";
import { amps, volts } from "../shared/words.ts";

/** from-memory: contacts of line switches stand about ten times their rating for a few milliseconds. */
const PEAK_SHARE = 10;

/** Current through the contacts of the line switch, steadily and at switch-on, against its rating. */
export const switchCurrent: Check = {
  id: "switch-current",
  area: "line",
  title: "Line switch",
  question: "Do the contacts of the line switch stand what they switch?",
  needs: "the rating marked on the switch (3 A 250 V)",
  sources: ["common-practice", "from-memory"],
  cautions: ["line-wiring-licensed"],
  run(model) {
    return livesTouching(model, "switch").flatMap((life) => {
      const side = lineSide(model, life);
      const switches = [...side.hotParts, ...side.neutralParts].filter(({ part }) => part.kind === "switch");
      const current = switches.length === 0 ? undefined : lineCurrent(model, life);
      if (current === undefined) return [];
      const surges = [switchOn(model, life, { hot: false }), switchOn(model, life, { hot: true })];
      const peak = Math.max(0, ...surges.map((surge) => surge?.linePeakAmps ?? 0));
      return switches.flatMap(({ part, state }): Finding[] => {
        const rated = state.ratedAmps;
        const found = `${amps(current.rmsAmps)} steady, ${amps(peak)} peak at switch-on`;
        if (rated === undefined) {
          return [
            report(switchCurrent, life, part, {
              severity: "unmeasured",
              title: `Rating of ${part.name} not known`,
              found,
              shouldBe: `a switch for at least ${amps(current.rmsAmps)} and ${volts(model.line.highVolts)} AC`,
              why: "Worn contacts weld, or burn and drop volts.",
              action: "Read its marking; with the set unplugged measure its contacts: below 0.05 ohm.",
              cautions: [],
            }),
          ];
        }
        const figures = [
          atMost(current.rmsAmps, rated, {
            label: `steady current of ${part.name}`,
            unit: "A",
            how: `RMS in the line, ${current.condition}, highest line`,
            source: "marking",
          }),
          atMost(peak, PEAK_SHARE * rated, {
            label: "peak at switch-on",
            unit: "A",
            how: "filters empty, crest of the highest line; limit ten times the rating; the core's own surge is not in it",
            source: "from-memory",
          }),
        ];
        if (state.ratedVolts !== undefined)
          figures.push(
            atLeast(state.ratedVolts, nominalVolts(model), {
              label: "rated voltage",
              unit: "V",
              how: "marking against the line as it is; ratings of line parts allow for its swing",
              source: "marking",
            }),
          );
        const base = { found, shouldBe: `at most ${amps(rated)} steady, ${amps(PEAK_SHARE * rated)} peak`, figures };
        const order = [
          {
            what: `switch, at least ${amps(Math.max(2 * current.rmsAmps, peak / PEAK_SHARE))}, 250 V AC`,
            quantity: 1,
            for: part.name,
            why: "contacts overloaded",
          },
        ];
        const low = (state.ratedVolts ?? Number.POSITIVE_INFINITY) < nominalVolts(model);
        if (current.rmsAmps > rated || low)
          return [
            report(switchCurrent, life, part, {
              ...base,
              severity: "replace",
              title: low ? `${part.name} is not rated for the line` : `${part.name} is overloaded`,
              why: "Overloaded contacts burn, and one day they weld shut.",
              action: "Fit a larger switch, or let it work a relay and leave the old one for show.",
              order,
              holds: "full-line",
            }),
          ];
        if (peak > PEAK_SHARE * rated)
          return [
            report(switchCurrent, life, part, {
              ...base,
              severity: "watch",
              title: `Switching on is hard on ${part.name}`,
              why: "Bounce at that current welds contacts.",
              action: "Fit an inrush limiter, or a larger switch.",
              order,
            }),
          ];
        return [
          good(switchCurrent, life, part, { ...base, title: `${part.name} stands its current`, why: "Contacts are within their rating." }),
        ];
      });
    });
  },
};
