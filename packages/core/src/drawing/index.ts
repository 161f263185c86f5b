export { type Attributes, drawCircle, drawLabel, drawLine, drawPath, drawRectangle, escapeText } from './elements.js'
