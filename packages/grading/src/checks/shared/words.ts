import { formatQuantity } from "@underchassis/calc";

/** Quantities as texts of findings write them; arguments in SI units, three significant digits. */
export const volts = (value: number): string => formatQuantity(value, "voltage");
export const amps = (value: number): string => formatQuantity(value, "current");
export const ohms = (value: number): string => formatQuantity(value, "resistance");
export const watts = (value: number): string => formatQuantity(value, "power");
export const farads = (value: number): string => formatQuantity(value, "capacitance");
export const joules = (value: number): string => formatQuantity(value, "energy");
export const seconds = (value: number): string => formatQuantity(value, "time");

/** A share as whole per cent: 0.125 is "13 %". */
export const percent = (share: number): string => `${Math.round(100 * share)} %`;

/** The usual ratings that shops keep: the first at or above a value, else the value itself. */
export function nextRating(value: number, ratings: readonly number[]): number {
  return ratings.find((rating) => rating >= value) ?? value;
}

/** Rated DC volts of electrolytic capacitors in the trade. common-practice. */
export const CAPACITOR_VOLTS = [16, 25, 35, 50, 63, 100, 160, 200, 250, 350, 400, 450, 500] as const;
/** Power ratings of resistors in the trade. common-practice. */
export const RESISTOR_WATTS = [0.5, 1, 2, 3, 5, 7, 10, 15, 20, 25, 50, 100] as const;
/** Fuse ratings that both systems know. IEC 60127 R10 and R20 values; the usual 1/4 inch ones lie among or near them. */
export const FUSE_AMPS = [0.1, 0.125, 0.16, 0.2, 0.25, 0.315, 0.4, 0.5, 0.63, 0.8, 1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 8, 10] as const;

/** Above this a wirewound resistor of that power is not made. common-practice. */
const MOST_WIREWOUND_OHMS = 50e3;
/** A bleeder as an order names it: wirewound where that exists, else metal oxide. */
export const bleeder = (value: number, rating: number): string =>
  `resistor ${ohms(value)} ${watts(rating)} ${value <= MOST_WIREWOUND_OHMS ? "wirewound" : "metal oxide"}`;
