// Generated from schemas/tube.schema.json; run npm run generate. Changes made here are lost.

/**
 * A tube type: heater, pins, limits, published operation, and the parameters that simulate it. SI units.
 */
export interface TubeRecord {
  $schema?: string;
  schemaVersion: 1;
  id: string;
  /**
   * Every name under which it is found, the usual one first.
   */
  names: string[];
  title: string;
  class:
    | "rectifier"
    | "diode"
    | "triode"
    | "twin-triode"
    | "duo-diode-triode"
    | "pentode"
    | "remote-cutoff-pentode"
    | "beam-power"
    | "power-pentode"
    | "converter"
    | "gas-regulator"
    | "gas-rectifier"
    | "electron-ray"
    | "triode-pentode"
    | "power-triode";
  base?: {
    code: string;
    socket?: string;
    pins?: {
      [k: string]: string;
    };
    source: string;
  };
  heater: {
    volts: number;
    amps: number;
    heating?: "direct" | "indirect" | "none";
    taps?: string;
    /**
     * Centre-tapped heater with its halves in parallel: what it then takes.
     */
    parallel?: {
      volts: number;
      amps: number;
    };
    source: string;
  };
  limits: {
    system: "design-center" | "design-maximum" | "absolute-maximum" | "ccs" | "icas" | "unknown";
    plateVolts?: number;
    screenVolts?: number;
    plateWatts?: number;
    screenWatts?: number;
    cathodeAmps?: number;
    gridOhmsFixedBias?: number;
    gridOhmsCathodeBias?: number;
    heaterCathodeVolts?: number;
    peakInverseVolts?: number;
    dcAmps?: number;
    peakAmps?: number;
    hotSwitchAmps?: number;
    rmsVoltsCapacitorInput?: number;
    rmsVoltsChokeInput?: number;
    maxInputFarads?: number;
    minSupplyOhms?: number;
    minRegulatorAmps?: number;
    maxRegulatorAmps?: number;
    maxShuntFarads?: number;
    /**
     * Gas regulators: voltage at which every tube of the type has lit.
     */
    maxStrikeVolts?: number;
    /**
     * Least supply resistance per plate where it grows with the supply voltage (RMS per plate); minSupplyOhms is then the one of the first row.
     */
    minSupplyOhmsAt?: {
      rmsVolts: number;
      ohms: number;
    }[];
    note?: string;
    source: string;
  };
  units: {
    kind: "triode" | "pentode" | "vacuum-diode" | "gas-diode" | "gas-regulator" | "none";
    /**
     * How many such units are in the bulb.
     */
    count?: number;
    /**
     * Parameters of the model equation: mu, ex, kg1, kg2, kp, kvb, vct; perveance; dropVolts, ohms; strikeVolts, operatingVolts, slopeOhms, extinguishAmps.
     */
    parameters?: {
      [k: string]: number;
    };
    /**
     * Which published points the parameters were made for.
     */
    fittedTo?: string;
    /**
     * Half-width of the spread of plate current from tube to tube, as a share.
     */
    spread?: number;
    source?: string;
  }[];
  typical: {
    service: string;
    plateVolts?: number;
    screenVolts?: number;
    gridVolts?: number;
    cathodeOhms?: number;
    plateAmps?: number;
    screenAmps?: number;
    siemens?: number;
    plateOhms?: number;
    mu?: number;
    loadOhms?: number;
    watts?: number;
    dropVolts?: number;
    dropAmps?: number;
    note?: string;
    source: string;
  }[];
  note?: string;
}
