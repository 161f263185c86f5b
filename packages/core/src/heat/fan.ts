import { badOption, requireWord } from '../error.js'
import { type FanRuleRow, fanRules } from '../tables/index.js'

/** The rule that is used where none is named: 20 degC less. */
export const usualFanRule = 'less-20'

/**
 * The published rules for a fan oven, in degC and in minutes off each hour; they differ, so the choice is the reader's.
 *
 * @example allFanRules().map(({ id }) => id)[0]   // 'less-20'
 */
export function allFanRules(): readonly FanRuleRow[] {
  return fanRules
}

function ruleOf(id: string): FanRuleRow {
  const rule = fanRules.find((row) => row.id === requireWord('fanRule', id))
  if (!rule)
    throw badOption(
      'fanRule',
      `"${id.slice(0, 40)}" is not a rule for fan ovens; the rules are ${fanRules.map((row) => row.id).join(', ')}`,
    )
  return rule
}

/** Between two pairs of a table by proportion; beyond its ends by the step of the end. */
function alongPairs(pairs: readonly (readonly [number, number])[], celsius: number): number {
  const [first, last] = [pairs[0]!, pairs.at(-1)!]
  if (celsius <= first[0]) return celsius - (first[0] - first[1])
  if (celsius >= last[0]) return celsius - (last[0] - last[1])
  const above = pairs.findIndex(([plain]) => plain >= celsius)
  const [from, to] = [pairs[above - 1]!, pairs[above]!]
  return from[1] + ((to[1] - from[1]) * (celsius - from[0])) / (to[0] - from[0])
}

/**
 * The setting of a fan oven that stands for one without a fan, in degC.
 *
 * @param rule one of `allFanRules()`
 * @throws PottleError `bad-option` for an unknown rule
 * @example fanSetting(200, 'growing')   // 170
 */
export function fanSetting(celsius: number, rule: string = usualFanRule): number {
  const { less, pairs } = ruleOf(rule)
  return pairs ? alongPairs(pairs, celsius) : celsius - (less ?? 0)
}

/**
 * The time in a fan oven that stands for a time without one, in the same unit.
 *
 * @example fanTime(60, 'less-25')   // 50
 */
export function fanTime(minutes: number, rule: string = usualFanRule): number {
  return minutes * (1 - ruleOf(rule).minutesAnHour / 60)
}
