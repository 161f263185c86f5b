export { modernEggs } from './eggs.js'
export { inModernUnits, type ModernValue } from './modern.js'
export { kitchenNumber, type Rounded, roundForKitchen } from './rounding.js'
export { findUnit, type ModernUnit, unitIds, unitsOf } from './units.js'
