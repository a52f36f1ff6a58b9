/**
 * What is assumed of a part when the job does not say. Every figure is from memory or common practice, is marked so in
 * reports, and gives way to anything that the job states.
 */

/** Half-width of a film, mica or ceramic capacitor's value when nothing is written, as a share. common-practice. */
export const DEFAULT_TOLERANCE = { minus: 0.1, plus: 0.1 } as const;

/** A choke's wire resistance per henry, for the usual 50 to 200 mA filter choke. from-memory. */
export const CHOKE_OHMS_PER_HENRY = 30;

/** Wire resistance of one side of a high-voltage winding as a share of rated volts over rated amperes. from-memory. */
export const HV_WINDING_SHARE = 0.045;
/** The same for heater and other low-voltage windings, and for the primary. from-memory. */
export const LOW_VOLTAGE_WINDING_SHARE = 0.025;
export const PRIMARY_WINDING_SHARE = 0.05;
/** How far such a guess may be off. from-memory. */
export const WINDING_GUESS = { minus: 0.4, plus: 0.4 } as const;
/** How far a measured wire resistance may be off: meter, leads and the copper's temperature. common-practice. */
export const WINDING_MEASURED = { minus: 0.05, plus: 0.05 } as const;
/** Spread of a winding's voltage about its rating. from-memory. */
export const WINDING_VOLTS_SPREAD = 0.02;

/** Voltage across a fuse at its rated current. from-memory: 0.1 to 0.2 V for 5 x 20 and 1/4 inch glass fuses of 1 A up. */
export const FUSE_DROP_VOLTS = 0.15;
/** Resistance of a switch contact in good order. common-practice: below 0.05 ohm. */
export const CONTACT_OHMS = 0.02;

/** Silicon rectifier diode of the 1 A class: parameters of the junction equation. from-memory. */
export const SILICON = { saturationAmps: 7e-9, emission: 1.8, ohms: 0.035 } as const;
/** Leakage of a silicon diode in reverse: microamperes at hundreds of volts. It decides how diodes in series share. from-memory. */
export const SILICON_REVERSE_OHMS = 1e8;
/** Selenium: knee and slope per plate at rated current. from-memory: about 1 V a plate new. */
export const SELENIUM_KNEE_VOLTS = 0.55;
export const SELENIUM_PLATE_VOLTS_AT_RATED = 1;
/** Leakage of a selenium stack in reverse at its rated volts, as a share of its rated current: a good stack. from-memory. */
export const SELENIUM_REVERSE_SHARE = 1e-3;
/** Inverse volts (RMS) that one plate stands. Published figures run from 20 to 30; 26 is the middle. */
export const SELENIUM_RMS_VOLTS_PER_PLATE = 26;

/** Inrush limiter when only its cold resistance and steady current are known. from-memory, generic 10 to 15 mm disc. */
export const THERMISTOR = { betaKelvin: 3000, hotShareAtRated: 0.03, bodyRiseKelvin: 150, tauSeconds: 40 } as const;

/** Meter that nobody described: a digital multimeter. common-practice. */
export const DEFAULT_METER = { inputOhms: 10e6, accuracy: 0.01, testVolts: 0.3 } as const;
/** Half-width of the line voltage around its stated value while a reading is taken. common-practice. */
export const LINE_DURING_READING = 0.02;
/** Out-of-circuit measurement without a stated meter. common-practice. */
export const DEFAULT_MEASUREMENT_ERROR = 0.02;
/** Electrolytic measured leakage is a snapshot: it drifts with reforming and temperature. common-practice. */
export const LEAK_SPREAD = 0.5;

/**
 * Leakage of a capacitor in a stack that nothing but leakage holds in the middle, as amperes per (farad times volt): a tenth of the
 * usual limit for new electrolytics (0.01 C V in microamperes), known to a factor of a few. from-memory.
 */
export const STACK_LEAK = { ampsPerFaradVolt: 1e-3, spread: 0.8 } as const;
