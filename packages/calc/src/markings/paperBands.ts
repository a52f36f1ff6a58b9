import { colourDigits } from "./colours.ts";
import { farads, type Percents, percentsOf, type Reader } from "./dotReading.ts";

/** From-memory; yellow and orange doubtful (reference section 4.3). */
export const paperPercents: Percents = { black: 20, white: 10, silver: 10, green: 5, gold: 5, yellow: 40, orange: 30, none: 20 };

/** Moulded polyester of the European five-band type (S17). */
export const polyesterPercents: Percents = { black: 20, white: 10, green: 5 };
export const polyesterVolts: Percents = { brown: 100, red: 250, yellow: 400 };

/** Moulded paper tubular: figure, figure, power of ten, tolerance, hundreds of volts in one band or two (S18 for the volts). */
export const paperBands: Reader = ([first, second, power, tolerance = "none", hundreds, units]) => {
  const value = farads([first, second], power);
  const percent = paperPercents[tolerance];
  const high = hundreds && colourDigits[hundreds];
  const low = units && colourDigits[units];
  if (value === undefined || percent === undefined || !high || (units !== undefined && low === undefined)) return [];
  const doubtful = tolerance === "yellow" || tolerance === "orange";
  return [
    {
      value,
      dimension: "capacitance",
      ...percentsOf(percent),
      toleranceWritten: tolerance !== "none",
      family: "moulded paper",
      because: units === undefined ? "fifth band in hundreds of volts" : "fifth and sixth band in hundreds of volts",
      ratedVolts: low === undefined ? high * 100 : (high * 10 + low) * 100,
      notes: doubtful ? [`${tolerance} as a tolerance is doubtful`] : [],
    },
  ];
};

/** European moulded polyester: figure, figure, power of ten, tolerance, volts (S17). */
export const polyesterBands: Reader = ([first, second, power, tolerance = "none", volts = "none"]) => {
  const value = farads([first, second], power);
  const percent = polyesterPercents[tolerance];
  const rated = polyesterVolts[volts];
  if (value === undefined || percent === undefined || rated === undefined) return [];
  return [
    {
      value,
      dimension: "capacitance",
      ...percentsOf(percent),
      toleranceWritten: true,
      family: "moulded polyester",
      because: "five bands from the top, volts last",
      ratedVolts: rated,
      notes: [],
    },
  ];
};
