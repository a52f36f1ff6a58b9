/** Thermal voltage kT/q in volts at 300.15 K (27 C, the usual nominal temperature of device models); SI defining constants, 2019. */
export const THERMAL_VOLTS = (1.380649e-23 * 300.15) / 1.602176634e-19;

/** Leakage in siemens put across every device port so that a point between two dark or blocked devices is defined. */
export const PORT_LEAK_SIEMENS = 1e-12;

/** Contact resistance in ohms of a closed switch that states none (common-practice). */
export const CONTACT_OHMS = 0.01;

/** Inductance in henries of a core whose magnetizing inductance is not given: large, so that its current can be neglected, yet finite, so that the core carries no steady voltage. */
export const CORE_HENRIES = 1e4;

/** Smallest series resistance in ohms that a device model works with; contact and bond wire have more (common-practice). */
export const LEAST_DEVICE_OHMS = 1e-4;

/** Resistance in ohms below which a resistor is kept as a branch current, not as a conductance. */
export const BRANCH_OHMS = 1e-6;
