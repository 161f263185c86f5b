export {
  type BrickOven,
  type BrickOvenOptions,
  brickOven,
  brickOvenRecords,
  type OvenMoment,
  ovenAfter,
  timeConstantFrom,
} from './brick.js'
export { allHeats, heatById, type OvenHeat } from './catalogue.js'
export { type Body, firstTerm, fourierFor, minutesToReach, type Solid, type Term, temperatureLeft } from './conduction.js'
export { method } from './consensus.js'
export { convertDegrees, type DegreeScale } from './degrees.js'
export type { Dish } from './dish.js'
export { allFanRules, fanSetting, fanTime } from './fan.js'
export { findHeat } from './findHeat.js'
export { allGasMarks, type GasMark, gasMarkExact, gasMarkNearest, gasMarkToFahrenheit } from './gas.js'
export { type LiquidHeat, liquidHeat, liquidHeats } from './liquids.js'
export { type Bake, type BakeWindow, bakingOrder, type Firing } from './order.js'
export { type BakePlan, type BakePlanOptions, bakePlan } from './plan.js'
export type { HeatClaim, HeatGoods, HeatName, HeatReading, HeatSetting, HeatStep } from './reading.js'
export { minutesByRule, type RoastRule, roastingMinutes, roastingRules } from './roast.js'
export { type Content, type CoreTemperature, coreTemperatures } from './safety.js'
export { type GasSetting, modernSettings, type OvenSettings, ovenSettings } from './settings.js'
export { shapeOf } from './shape.js'
export { type SugarHeight, sugarHeight, sugarHeights } from './sugar.js'
export { heatFromTest, type OvenSign, type OvenTest, type PaperColour, type TestReading, testsForHeat } from './tests.js'
