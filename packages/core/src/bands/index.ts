export { type Band, bandOf, bestOf, jointBand, type Line, mixtureBand, scaleBand, type Weighted } from './band.js'
export { constant, type Expression, type Factor, power, product, sum, type Term, times, type Unknown, unknown } from './expression.js'
export { factorOf } from './normal.js'
export { exact, lognormal, rectangle, type Shape, spread, triangle } from './shapes.js'
