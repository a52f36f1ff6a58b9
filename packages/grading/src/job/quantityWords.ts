/** What readings measure, in the job format's words, and how benches write it. Spaces, points and hyphens do not matter. */
const SPELLINGS: Readonly<Record<string, readonly string[]>> = {
  "dc-volts": ["vdc", "dcv", "voltsdc", "dcvoltage", "voltagedc"],
  "ac-volts": ["vac", "acv", "voltsac", "acvoltage", "voltageac", "vrms", "voltsrms", "rmsvolts", "acrms", "vacrms"],
  "ripple-volts": ["ripple", "ripplev", "ripplevoltage", "vpp", "vpkpk", "voltspp", "ripplepp", "rippleppvolts", "vripple"],
  ohms: ["ohm", "ω", "r", "resistance"],
  "dc-amps": ["adc", "dca", "ampsdc", "amperesdc", "dcamperes", "dccurrent"],
  "ac-amps": ["aac", "aca", "ampsac", "amperesac", "acamperes", "accurrent", "arms"],
};

const WORD_OF = new Map(
  Object.entries(SPELLINGS).flatMap(([word, spellings]) =>
    [word.replace("-", ""), ...spellings].map((spelling) => [spelling, word] as const),
  ),
);

/** The job format's word for a quantity as written at the bench (`V DC`, `VAC`, `ripple`); undefined when it is not clear. */
export function quantityWord(written: string): string | undefined {
  // NFKC folds the ohm sign into the Greek capital, lower case the capital into the small one.
  return WORD_OF.get(
    written
      .normalize("NFKC")
      .toLowerCase()
      .replace(/[\s._-]+/g, ""),
  );
}

/** The quantity of a spelling that carries a prefix (`mA DC`, `kohm`), which belongs to the value and not here. */
export function prefixedQuantityWord(written: string): string | undefined {
  return /^\s*[mkMuµμ]/.test(written) ? quantityWord(written.trim().slice(1)) : undefined;
}
