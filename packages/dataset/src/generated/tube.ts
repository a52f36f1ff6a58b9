// Generated from schemas/tube.schema.json; run npm run generate. Changes made here are lost.

/**
 * A tube type: heater, pins, limits, published operation, and the parameters that simulate it. SI units.
 */
export interface TubeRecord {
  $schema?: string;
  schemaVersion: 1;
  /**
   * Id of the record: the first name in small letters, and the file's name.
   */
  id: string;
  /**
   * Every name under which it is found, the usual one first.
   */
  names: string[];
  /**
   * What the tube is, in a few words: twin high-mu triode.
   */
  title: string;
  /**
   * What kind of tube it is.
   */
  class:
    | "rectifier"
    | "diode"
    | "triode"
    | "twin-triode"
    | "duo-diode-triode"
    | "pentode"
    | "remote-cutoff-pentode"
    | "tetrode"
    | "diode-pentode"
    | "beam-power"
    | "power-pentode"
    | "converter"
    | "gas-regulator"
    | "gas-rectifier"
    | "electron-ray"
    | "triode-pentode"
    | "power-triode";
  /**
   * Socket and pins.
   */
  base?: {
    /**
     * Basing designation: 9A.
     */
    code: string;
    /**
     * Socket: noval 9-pin.
     */
    socket?: string;
    /**
     * Function of each pin by its number: plate, grid, cathode; plate-1 and plate-2 where there are two; cap.
     */
    pins?: {
      [k: string]: string;
    };
    /**
     * Source of the basing: an id of datasets/sources.csv.
     */
    source: string;
  };
  /**
   * Heater or filament.
   */
  heater: {
    /**
     * Heater or filament, in volts.
     */
    volts: number;
    /**
     * Heater or filament current, in amperes: 300 mA is 0.3.
     */
    amps: number;
    /**
     * Whether the filament is the cathode (direct), or heats one (indirect).
     */
    heating?: "direct" | "indirect" | "none";
    /**
     * Taps of the heater, in words.
     */
    taps?: string;
    /**
     * Centre-tapped heater with its halves in parallel: what it then takes.
     */
    parallel?: {
      /**
       * Volts with the halves in parallel.
       */
      volts: number;
      /**
       * Amperes with the halves in parallel.
       */
      amps: number;
    };
    /**
     * Source of the heater's figures: an id of datasets/sources.csv.
     */
    source: string;
  };
  /**
   * What the type may bear, SI units.
   */
  limits: {
    /**
     * Rating system that the limits belong to.
     */
    system: "design-center" | "design-maximum" | "absolute-maximum" | "ccs" | "icas" | "unknown";
    /**
     * Largest plate voltage, volts.
     */
    plateVolts?: number;
    /**
     * Largest screen voltage, volts.
     */
    screenVolts?: number;
    /**
     * Largest plate dissipation, watts.
     */
    plateWatts?: number;
    /**
     * Largest screen dissipation, watts.
     */
    screenWatts?: number;
    /**
     * Largest cathode current, amperes: 60 mA is 0.06.
     */
    cathodeAmps?: number;
    /**
     * Largest grid circuit resistance with fixed bias, ohms.
     */
    gridOhmsFixedBias?: number;
    /**
     * Largest grid circuit resistance with cathode bias, ohms.
     */
    gridOhmsCathodeBias?: number;
    /**
     * Largest voltage between heater and cathode, volts.
     */
    heaterCathodeVolts?: number;
    /**
     * Largest peak inverse voltage of a plate, volts.
     */
    peakInverseVolts?: number;
    /**
     * Largest direct output current, amperes: 125 mA is 0.125.
     */
    dcAmps?: number;
    /**
     * Largest peak current of a plate, amperes.
     */
    peakAmps?: number;
    /**
     * Largest current of a plate when it is switched on hot, amperes.
     */
    hotSwitchAmps?: number;
    /**
     * Largest RMS voltage of a plate into a capacitor, volts.
     */
    rmsVoltsCapacitorInput?: number;
    /**
     * Largest RMS voltage of a plate into a choke, volts.
     */
    rmsVoltsChokeInput?: number;
    /**
     * Largest input capacitor, farads: 40 uF is 0.00004.
     */
    maxInputFarads?: number;
    /**
     * Least supply resistance of a plate, ohms.
     */
    minSupplyOhms?: number;
    /**
     * Gas regulators: least current, amperes.
     */
    minRegulatorAmps?: number;
    /**
     * Gas regulators: largest current, amperes.
     */
    maxRegulatorAmps?: number;
    /**
     * Gas regulators: largest capacitor across the tube, farads.
     */
    maxShuntFarads?: number;
    /**
     * Gas regulators: voltage at which every tube of the type has lit.
     */
    maxStrikeVolts?: number;
    /**
     * Least supply resistance per plate where it grows with the supply voltage (RMS per plate); minSupplyOhms is then the one of the first row.
     */
    minSupplyOhmsAt?: {
      /**
       * Supply voltage of a plate, volts RMS.
       */
      rmsVolts: number;
      /**
       * Least resistance at that voltage, ohms.
       */
      ohms: number;
    }[];
    /**
     * What the figures do not say.
     */
    note?: string;
    /**
     * Source of the limits: an id of datasets/sources.csv.
     */
    source: string;
  };
  /**
   * The systems in the bulb, each with its model.
   */
  units: {
    /**
     * Model that simulates it; none: it is not simulated.
     */
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
     * How far the model lies from each published operating point of this record, as shares of the published value (0.05: the model gives 5 % more). Written by scripts/fit-tubes.ts and held to by a test.
     */
    distance?: {
      /**
       * Which entry of typical, counted from 1.
       */
      point: number;
      /**
       * Plate current: model over published, less 1.
       */
      plateAmps: number;
      /**
       * Screen current: model over published, less 1.
       */
      screenAmps?: number;
      /**
       * Transconductance: model over published, less 1.
       */
      transconductance?: number;
    }[];
    /**
     * Half-width of the spread of plate current from tube to tube, as a share.
     */
    spread?: number;
    /**
     * Source of the parameters: an id of datasets/sources.csv.
     */
    source?: string;
  }[];
  /**
   * Published operating points.
   */
  typical: {
    /**
     * Class of operation that the figures belong to: class A amplifier.
     */
    service: string;
    /**
     * Which entry of units the figures belong to, counted from 1; the first when absent.
     */
    unit?: number;
    /**
     * Plate voltage, volts.
     */
    plateVolts?: number;
    /**
     * Screen voltage, volts.
     */
    screenVolts?: number;
    /**
     * Grid voltage, volts against the cathode.
     */
    gridVolts?: number;
    /**
     * Cathode resistor that gives the bias, ohms.
     */
    cathodeOhms?: number;
    /**
     * Plate current, amperes: 5 mA is 0.005.
     */
    plateAmps?: number;
    /**
     * Screen current, amperes.
     */
    screenAmps?: number;
    /**
     * Transconductance, siemens: 5000 micromhos are 0.005.
     */
    siemens?: number;
    /**
     * Plate resistance, ohms.
     */
    plateOhms?: number;
    /**
     * Amplification factor.
     */
    mu?: number;
    /**
     * Load, ohms.
     */
    loadOhms?: number;
    /**
     * Output, watts.
     */
    watts?: number;
    /**
     * Tube drop, volts.
     */
    dropVolts?: number;
    /**
     * Current that the drop belongs to, amperes.
     */
    dropAmps?: number;
    /**
     * What the figures do not say.
     */
    note?: string;
    /**
     * Source of these figures: an id of datasets/sources.csv.
     */
    source: string;
  }[];
  /**
   * What the figures do not say.
   */
  note?: string;
}
