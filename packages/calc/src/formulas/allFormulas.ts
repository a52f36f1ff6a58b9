// Generated from packages/calc/src/formulas/; run npm run generate. Changes made here are lost.

import { bleederBehindDropper } from "./dc/bleederBehindDropper.ts";
import { bleederCurrent } from "./dc/bleederCurrent.ts";
import { bleederDivider } from "./dc/bleederDivider.ts";
import { bridgeDetector } from "./dc/bridgeDetector.ts";
import { droppingResistor } from "./dc/droppingResistor.ts";
import { loadedDivider } from "./dc/loadedDivider.ts";
import { maxPowerTransfer } from "./dc/maxPowerTransfer.ts";
import { parallelResistance } from "./dc/parallelResistance.ts";
import { powerAndResistance } from "./dc/powerAndResistance.ts";
import { resistanceForPower } from "./dc/resistanceForPower.ts";
import { resistorAtCurrent } from "./dc/resistorAtCurrent.ts";
import { resistorAtPower } from "./dc/resistorAtPower.ts";
import { resistorAtVoltage } from "./dc/resistorAtVoltage.ts";
import { seriesCircuit } from "./dc/seriesCircuit.ts";
import { seriesResistance } from "./dc/seriesResistance.ts";
import { sourceIntoLoad } from "./dc/sourceIntoLoad.ts";
import { sourceResistance } from "./dc/sourceResistance.ts";
import { unloadedDivider } from "./dc/unloadedDivider.ts";
import { bleederForChoke } from "./filters/bleederForChoke.ts";
import { chokeCapacitorChoke } from "./filters/chokeCapacitorChoke.ts";
import { chokeLoss } from "./filters/chokeLoss.ts";
import { criticalInductance } from "./filters/criticalInductance.ts";
import { criticalInductanceRule } from "./filters/criticalInductanceRule.ts";
import { inductorFilterRipple } from "./filters/inductorFilterRipple.ts";
import { inductorForRippleFactor } from "./filters/inductorForRippleFactor.ts";
import { lcSectionFactor } from "./filters/lcSectionFactor.ts";
import { lSectionCapacitor } from "./filters/lSectionCapacitor.ts";
import { lSectionRipple } from "./filters/lSectionRipple.ts";
import { lSectionRippleRule } from "./filters/lSectionRippleRule.ts";
import { piSectionRipple } from "./filters/piSectionRipple.ts";
import { rcSectionFactor } from "./filters/rcSectionFactor.ts";
import { reservoirForRipple } from "./filters/reservoirForRipple.ts";
import { reservoirForRippleFactor } from "./filters/reservoirForRippleFactor.ts";
import { reservoirRipple } from "./filters/reservoirRipple.ts";
import { rippleFactor } from "./filters/rippleFactor.ts";
import { rippleFromPeakToPeak } from "./filters/rippleFromPeakToPeak.ts";
import type { Formula } from "./formula.ts";
import { ammeterInsertion } from "./meters/ammeterInsertion.ts";
import { meterMultiplier } from "./meters/meterMultiplier.ts";
import { meterShunt } from "./meters/meterShunt.ts";
import { rangeExtension } from "./meters/rangeExtension.ts";
import { readingWithoutMeter } from "./meters/readingWithoutMeter.ts";
import { seriesOhmmeter } from "./meters/seriesOhmmeter.ts";
import { voltmeterLoading } from "./meters/voltmeterLoading.ts";
import { balancingResistor } from "./protection/balancingResistor.ts";
import { bleederForTime } from "./protection/bleederForTime.ts";
import { capacitorEsr } from "./protection/capacitorEsr.ts";
import { dischargeResistor } from "./protection/dischargeResistor.ts";
import { electrolyticLeakageLimit } from "./protection/electrolyticLeakageLimit.ts";
import { electrolyticLife } from "./protection/electrolyticLife.ts";
import { electrolyticSurgeVoltage } from "./protection/electrolyticSurgeVoltage.ts";
import { fusePulseDerating } from "./protection/fusePulseDerating.ts";
import { fuseRating } from "./protection/fuseRating.ts";
import { inrushLimiter } from "./protection/inrushLimiter.ts";
import { lineCapacitorCurrent } from "./protection/lineCapacitorCurrent.ts";
import { lineCapacitorLimit } from "./protection/lineCapacitorLimit.ts";
import { ntcCapacitanceRating } from "./protection/ntcCapacitanceRating.ts";
import { ntcResidual } from "./protection/ntcResidual.ts";
import { ntcResistance } from "./protection/ntcResistance.ts";
import { pulseIntegral } from "./protection/pulseIntegral.ts";
import { reformingResistor } from "./protection/reformingResistor.ts";
import { resistorDerating } from "./protection/resistorDerating.ts";
import { resistorsForVoltage } from "./protection/resistorsForVoltage.ts";
import { resistorVoltageLimit } from "./protection/resistorVoltageLimit.ts";
import { temperatureRise } from "./protection/temperatureRise.ts";
import { touchCurrentReading } from "./protection/touchCurrentReading.ts";
import { trapezoidIntegral } from "./protection/trapezoidIntegral.ts";
import { windingTemperature } from "./protection/windingTemperature.ts";
import { wireGauge } from "./protection/wireGauge.ts";
import { bridgeCapacitorInput } from "./rectifiers/bridgeCapacitorInput.ts";
import { bridgeResistive } from "./rectifiers/bridgeResistive.ts";
import { capacitorInputOutput } from "./rectifiers/capacitorInputOutput.ts";
import { capacitorInputSourceResistance } from "./rectifiers/capacitorInputSourceResistance.ts";
import { chokeInputOutput } from "./rectifiers/chokeInputOutput.ts";
import { diodeString } from "./rectifiers/diodeString.ts";
import { fullWaveCenterTapCapacitorInput } from "./rectifiers/fullWaveCenterTapCapacitorInput.ts";
import { fullWaveCenterTapResistive } from "./rectifiers/fullWaveCenterTapResistive.ts";
import { fullWaveDoubler } from "./rectifiers/fullWaveDoubler.ts";
import { halfWaveCapacitorInput } from "./rectifiers/halfWaveCapacitorInput.ts";
import { halfWaveDoubler } from "./rectifiers/halfWaveDoubler.ts";
import { halfWaveResistive } from "./rectifiers/halfWaveResistive.ts";
import { multiplierLadder } from "./rectifiers/multiplierLadder.ts";
import { multiplierSag } from "./rectifiers/multiplierSag.ts";
import { plateSupplyResistance } from "./rectifiers/plateSupplyResistance.ts";
import { regulation } from "./rectifiers/regulation.ts";
import { rippleFrequency } from "./rectifiers/rippleFrequency.ts";
import { seleniumToSilicon } from "./rectifiers/seleniumToSilicon.ts";
import { sineFromPeak } from "./rectifiers/sineFromPeak.ts";
import { sineFromRms } from "./rectifiers/sineFromRms.ts";
import { surgeResistor } from "./rectifiers/surgeResistor.ts";
import { vacuumDiodeDrop } from "./rectifiers/vacuumDiodeDrop.ts";
import { gasTubeStart } from "./regulators/gasTubeStart.ts";
import { regulatorCurrentCorners } from "./regulators/regulatorCurrentCorners.ts";
import { regulatorResistor } from "./regulators/regulatorResistor.ts";
import { regulatorResistorMiddle } from "./regulators/regulatorResistorMiddle.ts";
import { regulatorResistorMinimum } from "./regulators/regulatorResistorMinimum.ts";
import { regulatorSlope } from "./regulators/regulatorSlope.ts";
import { shuntRegulator } from "./regulators/shuntRegulator.ts";
import { bandwidth } from "./rf/bandwidth.ts";
import { capacitiveReactance } from "./rf/capacitiveReactance.ts";
import { criticalCoupling } from "./rf/criticalCoupling.ts";
import { crystalPulling } from "./rf/crystalPulling.ts";
import { dbmToWatts } from "./rf/dbmToWatts.ts";
import { decibelSum } from "./rf/decibelSum.ts";
import { decibelsFromPowers } from "./rf/decibelsFromPowers.ts";
import { decibelsFromRatio } from "./rf/decibelsFromRatio.ts";
import { decibelsFromVoltages } from "./rf/decibelsFromVoltages.ts";
import { detectorTimeConstant } from "./rf/detectorTimeConstant.ts";
import { envelopePower } from "./rf/envelopePower.ts";
import { imageFrequency } from "./rf/imageFrequency.ts";
import { inductiveReactance } from "./rf/inductiveReactance.ts";
import { lineInductance } from "./rf/lineInductance.ts";
import { lineStress } from "./rf/lineStress.ts";
import { mismatchPower } from "./rf/mismatchPower.ts";
import { parallelResonantCircuit } from "./rf/parallelResonantCircuit.ts";
import { piNetwork } from "./rf/piNetwork.ts";
import { plateTankInput } from "./rf/plateTankInput.ts";
import { powerThroughDecibels } from "./rf/powerThroughDecibels.ts";
import { qFromBandwidth } from "./rf/qFromBandwidth.ts";
import { quarterWaveInput } from "./rf/quarterWaveInput.ts";
import { quarterWaveTransformer } from "./rf/quarterWaveTransformer.ts";
import { resonance } from "./rf/resonance.ts";
import { resonatingCapacitance } from "./rf/resonatingCapacitance.ts";
import { resonatingInductance } from "./rf/resonatingInductance.ts";
import { seriesImpedance } from "./rf/seriesImpedance.ts";
import { seriesResonantCircuit } from "./rf/seriesResonantCircuit.ts";
import { swrFromLoad } from "./rf/swrFromLoad.ts";
import { swrFromPowers } from "./rf/swrFromPowers.ts";
import { tAttenuator } from "./rf/tAttenuator.ts";
import { tankCurrent } from "./rf/tankCurrent.ts";
import { wavelength } from "./rf/wavelength.ts";
import { buckBoost } from "./transformers/buckBoost.ts";
import { heaterCapacitor } from "./transformers/heaterCapacitor.ts";
import { heaterShunt } from "./transformers/heaterShunt.ts";
import { heaterString } from "./transformers/heaterString.ts";
import { matchingRatio } from "./transformers/matchingRatio.ts";
import { reflectedImpedance } from "./transformers/reflectedImpedance.ts";
import { toroidTurns } from "./transformers/toroidTurns.ts";
import { turnsVoltage } from "./transformers/turnsVoltage.ts";
import { voltAmperes } from "./transformers/voltAmperes.ts";
import { voltageAtFrequency } from "./transformers/voltageAtFrequency.ts";
import { voltageAtLine } from "./transformers/voltageAtLine.ts";
import { capacitanceForEnergy } from "./transients/capacitanceForEnergy.ts";
import { capacitorEnergy } from "./transients/capacitorEnergy.ts";
import { inductorEnergy } from "./transients/inductorEnergy.ts";
import { parallelCapacitance } from "./transients/parallelCapacitance.ts";
import { parallelInductance } from "./transients/parallelInductance.ts";
import { rcCharge } from "./transients/rcCharge.ts";
import { rcDischarge } from "./transients/rcDischarge.ts";
import { rcDischargeTime } from "./transients/rcDischargeTime.ts";
import { rcTimeConstant } from "./transients/rcTimeConstant.ts";
import { rlRise } from "./transients/rlRise.ts";
import { seriesCapacitance } from "./transients/seriesCapacitance.ts";
import { seriesCapacitorShare } from "./transients/seriesCapacitorShare.ts";
import { seriesInductance } from "./transients/seriesInductance.ts";
import { timeConstantsPassed } from "./transients/timeConstantsPassed.ts";
import { amplificationFactor } from "./tubes/amplificationFactor.ts";
import { amplificationFactorFromBalance } from "./tubes/amplificationFactorFromBalance.ts";
import { cathodeBiasResistor } from "./tubes/cathodeBiasResistor.ts";
import { cathodeBypassCorner } from "./tubes/cathodeBypassCorner.ts";
import { cathodeFollower } from "./tubes/cathodeFollower.ts";
import { classBOutput } from "./tubes/classBOutput.ts";
import { couplingCorner } from "./tubes/couplingCorner.ts";
import { couplingLeakage } from "./tubes/couplingLeakage.ts";
import { diodePerveance } from "./tubes/diodePerveance.ts";
import { electrodeDissipation } from "./tubes/electrodeDissipation.ts";
import { gainFromSwing } from "./tubes/gainFromSwing.ts";
import { gridLeakBias } from "./tubes/gridLeakBias.ts";
import { loadLinePower } from "./tubes/loadLinePower.ts";
import { millerInput } from "./tubes/millerInput.ts";
import { modulatedPower } from "./tubes/modulatedPower.ts";
import { negativeFeedback } from "./tubes/negativeFeedback.ts";
import { pentodeGain } from "./tubes/pentodeGain.ts";
import { plateModulation } from "./tubes/plateModulation.ts";
import { plateVoltage } from "./tubes/plateVoltage.ts";
import { projectedCutoff } from "./tubes/projectedCutoff.ts";
import { rcCorner } from "./tubes/rcCorner.ts";
import { rfPowerBalance } from "./tubes/rfPowerBalance.ts";
import { screenBypassCorner } from "./tubes/screenBypassCorner.ts";
import { screenResistor } from "./tubes/screenResistor.ts";
import { transformerCoupledOutput } from "./tubes/transformerCoupledOutput.ts";
import { triodeGain } from "./tubes/triodeGain.ts";
import { triodeLaw } from "./tubes/triodeLaw.ts";
import { triodePower } from "./tubes/triodePower.ts";
import { tubeConstantsFromCurves } from "./tubes/tubeConstantsFromCurves.ts";
import { tubeConstantsFromGains } from "./tubes/tubeConstantsFromGains.ts";

/** Every formula, by area and name. */
export const allFormulas: readonly Formula[] = [
  bleederBehindDropper,
  bleederCurrent,
  bleederDivider,
  bridgeDetector,
  droppingResistor,
  loadedDivider,
  maxPowerTransfer,
  parallelResistance,
  powerAndResistance,
  resistanceForPower,
  resistorAtCurrent,
  resistorAtPower,
  resistorAtVoltage,
  seriesCircuit,
  seriesResistance,
  sourceIntoLoad,
  sourceResistance,
  unloadedDivider,
  bleederForChoke,
  chokeCapacitorChoke,
  chokeLoss,
  criticalInductance,
  criticalInductanceRule,
  inductorFilterRipple,
  inductorForRippleFactor,
  lSectionCapacitor,
  lSectionRipple,
  lSectionRippleRule,
  lcSectionFactor,
  piSectionRipple,
  rcSectionFactor,
  reservoirForRipple,
  reservoirForRippleFactor,
  reservoirRipple,
  rippleFactor,
  rippleFromPeakToPeak,
  ammeterInsertion,
  meterMultiplier,
  meterShunt,
  rangeExtension,
  readingWithoutMeter,
  seriesOhmmeter,
  voltmeterLoading,
  balancingResistor,
  bleederForTime,
  capacitorEsr,
  dischargeResistor,
  electrolyticLeakageLimit,
  electrolyticLife,
  electrolyticSurgeVoltage,
  fusePulseDerating,
  fuseRating,
  inrushLimiter,
  lineCapacitorCurrent,
  lineCapacitorLimit,
  ntcCapacitanceRating,
  ntcResidual,
  ntcResistance,
  pulseIntegral,
  reformingResistor,
  resistorDerating,
  resistorVoltageLimit,
  resistorsForVoltage,
  temperatureRise,
  touchCurrentReading,
  trapezoidIntegral,
  windingTemperature,
  wireGauge,
  bridgeCapacitorInput,
  bridgeResistive,
  capacitorInputOutput,
  capacitorInputSourceResistance,
  chokeInputOutput,
  diodeString,
  fullWaveCenterTapCapacitorInput,
  fullWaveCenterTapResistive,
  fullWaveDoubler,
  halfWaveCapacitorInput,
  halfWaveDoubler,
  halfWaveResistive,
  multiplierLadder,
  multiplierSag,
  plateSupplyResistance,
  regulation,
  rippleFrequency,
  seleniumToSilicon,
  sineFromPeak,
  sineFromRms,
  surgeResistor,
  vacuumDiodeDrop,
  gasTubeStart,
  regulatorCurrentCorners,
  regulatorResistor,
  regulatorResistorMiddle,
  regulatorResistorMinimum,
  regulatorSlope,
  shuntRegulator,
  bandwidth,
  capacitiveReactance,
  criticalCoupling,
  crystalPulling,
  dbmToWatts,
  decibelSum,
  decibelsFromPowers,
  decibelsFromRatio,
  decibelsFromVoltages,
  detectorTimeConstant,
  envelopePower,
  imageFrequency,
  inductiveReactance,
  lineInductance,
  lineStress,
  mismatchPower,
  parallelResonantCircuit,
  piNetwork,
  plateTankInput,
  powerThroughDecibels,
  qFromBandwidth,
  quarterWaveInput,
  quarterWaveTransformer,
  resonance,
  resonatingCapacitance,
  resonatingInductance,
  seriesImpedance,
  seriesResonantCircuit,
  swrFromLoad,
  swrFromPowers,
  tAttenuator,
  tankCurrent,
  wavelength,
  buckBoost,
  heaterCapacitor,
  heaterShunt,
  heaterString,
  matchingRatio,
  reflectedImpedance,
  toroidTurns,
  turnsVoltage,
  voltAmperes,
  voltageAtFrequency,
  voltageAtLine,
  capacitanceForEnergy,
  capacitorEnergy,
  inductorEnergy,
  parallelCapacitance,
  parallelInductance,
  rcCharge,
  rcDischarge,
  rcDischargeTime,
  rcTimeConstant,
  rlRise,
  seriesCapacitance,
  seriesCapacitorShare,
  seriesInductance,
  timeConstantsPassed,
  amplificationFactor,
  amplificationFactorFromBalance,
  cathodeBiasResistor,
  cathodeBypassCorner,
  cathodeFollower,
  classBOutput,
  couplingCorner,
  couplingLeakage,
  diodePerveance,
  electrodeDissipation,
  gainFromSwing,
  gridLeakBias,
  loadLinePower,
  millerInput,
  modulatedPower,
  negativeFeedback,
  pentodeGain,
  plateModulation,
  plateVoltage,
  projectedCutoff,
  rcCorner,
  rfPowerBalance,
  screenBypassCorner,
  screenResistor,
  transformerCoupledOutput,
  triodeGain,
  triodeLaw,
  triodePower,
  tubeConstantsFromCurves,
  tubeConstantsFromGains,
];
