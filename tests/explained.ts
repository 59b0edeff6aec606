/** A fault that no test can see: where it is planted (part of its line, the text that it changes, what that becomes) and why it changes nothing. */
export interface Explanation {
  line?: string
  was?: string
  becomes?: string
  why: string
}

const CONTINUOUS = 'both sides of the comparison give the same value there'
const ROUNDS = 'one round more or less of a search that has come home'

/** Faults of `npm run mutate` that leave every result as it is, file by file. They are printed, but count neither as caught nor as missed. */
export const EXPLAINED: Record<string, Explanation[]> = {
  'solve/marks': [
    {
      was: 'change > 0',
      becomes: 'change >= 0',
      why: 'with no change at all the size is never exceeded, so that the direction is not told',
    },
    {
      was: 'readingPlusMinus === 0',
      becomes: 'false',
      why: 'without a ± both rules below say the same, and leave no edge between them',
    },
    {
      was: 'mean(al!, ar!) - mean(bl!, br!)',
      becomes: 'mean(al!, ar!) + mean(bl!, br!)',
      why: 'only the width of this interval is used, and a sum has the same',
    },
  ],
  'solve/fork-stack': [
    {
      was: 'at < most - 1e-9',
      becomes: 'at <= most - 1e-9',
      why: 'the end of the range is put after the loop, and rounding lies far from either side of it',
    },
    {
      was: 'group?.closes',
      becomes: 'group.closes',
      why: 'a spring has one group at least',
    },
    {
      was: 'spring[0]?.closes',
      becomes: 'spring[0].closes',
      why: 'a spring has one group at least',
    },
  ],
  'core/brakingOvershoot': [
    {
      was: 'stiffness > 0',
      becomes: 'stiffness >= 0',
      why: 'a stiffness of 0 has a natural frequency of 0, refused; the slope is then no number or above 0',
    },
  ],
  'core/chassis': [
    {
      line: 'return { rearX: 0',
      why: 'a blank that takeAttitude fills in before anything reads it',
    },
    {
      was: 'out.cosRake > 0',
      becomes: 'out.cosRake >= 0',
      why: 'a cosine of exactly 0 gives no trail, which poseOf refuses',
    },
  ],
  'core/choose': [
    {
      was: 'spring.closes === null',
      becomes: 'false',
      why: 'a group that closes at null never closes, as one without the field',
    },
    {
      was: 'preload + riderSag > closes',
      becomes: 'preload + riderSag >= closes',
      why: 'equal to the last digit of a search',
    },
    {
      line: 'ROUNDING) misses.push',
      why: 'equal to a picometre less the rounding that is let pass',
    },
  ],
  'core/damper': [
    { was: 'speed <= velocity', becomes: 'speed < velocity', why: CONTINUOUS },
    { was: 'speed >= 0', becomes: 'speed > 0', why: CONTINUOUS },
  ],
  'core/damping': [
    { was: 'ratio >= 1', becomes: 'ratio > 1', why: 'e to the minus infinity is 0 too' },
    { was: 'r <= 1', becomes: 'r < 1', why: CONTINUOUS },
  ],
  'core/eigen': [
    {
      line: 'put(a, i, k, 0)',
      why: 'sets to 0 what a reflection has brought to the rounding of 0',
    },
    {
      line: 'for (let i = k + 2;',
      why: 'sets to 0 what a reflection has brought to the rounding of 0',
    },
    {
      line: 'if (k > low) for',
      why: 'sets to 0 what a reflection has brought to the rounding of 0',
    },
    { was: 'k < high', becomes: 'k <= high', why: 'the last row has nothing below it to reflect' },
    { was: 'tries > 30', becomes: 'tries >= 30', why: ROUNDS },
    {
      line: 'tries > 30 ?',
      why: 'a safety net: since what is next to 0 counts as 0, no matrix is known that falls into it',
    },
    {
      was: 'tries += 1',
      why: 'counts for that net and for the other shifts of every tenth try alone',
    },
    {
      was: 'j < a.length',
      becomes: 'j <= a.length',
      why: 'past its end a row has no number to change',
    },
    {
      was: 'j < h.length',
      becomes: 'j <= h.length',
      why: 'past its end a row has no number to change',
    },
    {
      was: 'k < v.length',
      becomes: 'k <= v.length',
      why: 'past its end a row has no number to change',
    },
    { was: 'Math.max(0, k - 1)', why: 'further left there is nothing but 0' },
    { was: 'z === 0', becomes: 'false', why: 'with a third of 0 both give the same length' },
    {
      line: 'const whole = ',
      why: 'a safety net: since what is next to 0 counts as 0, no matrix is known that falls into it',
    },
    { was: 'Math.abs(y) < TINY', becomes: 'Math.abs(y) <= TINY', why: 'equal to the last digit' },
    { was: 'Math.abs(z) < TINY', becomes: 'Math.abs(z) <= TINY', why: 'equal to the last digit' },
    {
      was: 'Math.abs(entry) < TINY',
      becomes: 'Math.abs(entry) <= TINY',
      why: 'equal to the last digit',
    },
    { line: 'const neighbours =', why: 'an entry that is rounding is let go a sweep later' },
    {
      line: 'Math.max(TINY, Number.EPSILON',
      why: 'an entry that is rounding is let go a sweep later',
    },
    { was: 'tries > 300', why: 'no matrix is known that does not settle' },
    { line: 'the QR iteration did not settle', why: 'no matrix is known that does not settle' },
  ],
  'core/end': [
    { was: 'x < 0', becomes: 'x <= 0', why: CONTINUOUS },
    { was: 'x > travel', becomes: 'x >= travel', why: CONTINUOUS },
    { was: 'short >= 0', becomes: 'short > 0', why: 'the search hands an end back that is a root' },
    { was: 'over <= 0', becomes: 'over < 0', why: 'the search hands an end back that is a root' },
    { was: 'closing >= 0', becomes: 'closing > 0', why: CONTINUOUS },
  ],
  'core/estimate': [
    {
      was: 'springRate > 0',
      becomes: 'springRate >= 0',
      why: 'a difference of measured forces that is 0 to the last digit',
    },
  ],
  'core/forceNeeded': [
    { was: 'force <= 0', becomes: 'force < 0', why: 'equal to the last digit' },
    { was: 'i < 12', becomes: 'i <= 12', why: ROUNDS },
    { was: 'i++', why: 'every search ends long before' },
    { line: 'if (Math.abs(off) < 1e-13) break', why: ROUNDS },
  ],
  'core/fork': [
    { was: 'short >= 0', becomes: 'short > 0', why: 'the search hands an end back that is a root' },
    { was: 'over <= 0', becomes: 'over < 0', why: 'the search hands an end back that is a root' },
  ],
  'core/gas': [
    {
      was: 'curve.exponent === 1',
      becomes: 'false',
      why: 'a number to the power 1 is itself: only sooner',
    },
  ],
  'core/integrate': [
    {
      was: 'i < this.y.length',
      becomes: 'i <= this.y.length',
      why: 'a typed array takes nothing beyond its end',
    },
    {
      was: 'false',
      becomes: 'true',
      line: 'private prepared',
      why: 'attempt sets it before inside reads it',
    },
    {
      was: 'true',
      becomes: 'false',
      line: 'this.prepared',
      why: 'the same bends worked out anew: only later',
    },
    { was: '!this.prepared', becomes: 'true', why: 'the same bends worked out anew: only later' },
    { was: 'i < n', becomes: 'i <= n', why: 'a typed array takes nothing beyond its end' },
    {
      was: 'i < y.length',
      becomes: 'i <= y.length',
      why: 'a typed array takes nothing beyond its end',
    },
  ],
  'core/lookout': [
    { was: 'side > 0', becomes: 'side >= 0', why: 'a quantity that has crossed has a side' },
  ],
  'core/newton': [
    { was: 'round < ROUNDS', becomes: 'round <= ROUNDS', why: ROUNDS },
    { was: 'travel < 0', becomes: 'travel <= 0', why: CONTINUOUS },
    { was: 'travel > last', becomes: 'travel >= last', why: CONTINUOUS },
  ],
  'core/oil': [
    { line: 'const near =', why: 'the line is the same from either reading, but for rounding' },
  ],
  'core/overshoot': [
    { was: 'zeta >= 1', becomes: 'zeta > 1', why: 'e to the minus infinity is 0 too' },
    { was: 'angle < STEP_LIKE', becomes: 'angle <= STEP_LIKE', why: CONTINUOUS },
  ],
  'core/progressive': [
    { was: 'straight <= rounding', becomes: 'straight < rounding', why: 'equal to the last digit' },
    {
      was: 'pValue >= SIGNIFICANCE',
      becomes: 'pValue > SIGNIFICANCE',
      why: 'equal to the last digit',
    },
    {
      was: 'bend.residuals < best.residuals',
      becomes: 'bend.residuals <= best.residuals',
      why: 'the one fit is as good as the other',
    },
    {
      was: 'kink > 0',
      becomes: 'kink >= 0',
      why: 'with a kink at 0 there are no two slopes to find',
    },
    { was: 'stiff > soft', becomes: 'stiff >= soft', why: 'equal to the last digit' },
    {
      line: '* (point[1] - y)',
      was: 'point[0] - x',
      why: 'the deviations of one side add up to 0, so what the other is counted from cancels',
    },
    {
      was: 'point[1] - y',
      why: 'the deviations of one side add up to 0, so what the other is counted from cancels',
    },
  ],
  'core/ratio': [
    {
      was: 'curve.strokes[piece]! > stroke',
      becomes: 'curve.strokes[piece]! >= stroke',
      why: CONTINUOUS,
    },
  ],
  'core/rear': [
    {
      was: 'deflection > preload',
      why: 'a joint before full extension is left out later, and one at it makes a piece of no length',
    },
  ],
  'core/regression': [
    {
      line: 'const sxy =',
      why: 'the deviations of one side add up to 0, so what the other is counted from cancels',
    },
  ],
  'core/road': [
    { was: 'time !== asked', becomes: 'true', why: 'the same height worked out anew: only later' },
  ],
  'core/root': [
    { was: 'i < 200', why: 'every search ends long before' },
    { was: 'i++', why: 'every search ends long before' },
    { line: 'return Math.abs(fa) < Math.abs(fb) ? a : b', why: 'every search ends long before' },
    { was: 'fx > 0', becomes: 'fx >= 0', why: 'a value of exactly 0 ends the search' },
    { was: 'fa > 0', becomes: 'fa >= 0', why: 'a value of exactly 0 ends the search' },
    {
      was: 'Math.abs(fa) < Math.abs(fb)',
      becomes: 'Math.abs(fa) <= Math.abs(fb)',
      why: 'both ends are as near',
    },
    { was: '1 - smallest', becomes: '1 + smallest', why: 'a step that is safe is below 1' },
    {
      was: '2 * Number.EPSILON * Math.abs(best) + 1e-300',
      becomes: '2 * Number.EPSILON * Math.abs(best) - 1e-300',
      why: 'tells for roots within 1e-300 of 0 alone',
    },
    { was: 'smallest > 0.5', becomes: 'smallest >= 0.5', why: ROUNDS },
    {
      was: 'phi * phi < xi',
      becomes: 'phi * phi <= xi',
      why: 'the edge of where a step is safe, met to the last digit',
    },
    {
      was: '(1 - phi) * (1 - phi) < 1 - xi',
      becomes: '(1 - phi) * (1 - phi) <= 1 - xi',
      why: 'the edge of where a step is safe, met to the last digit',
    },
  ],
  'core/spring': [
    { was: 'to <= from', why: 'a piece of no length is passed over' },
    { was: 'to === Infinity', becomes: 'false', why: 'a joint at infinity is never reached' },
    { was: 'deflection <= 0', becomes: 'deflection < 0', why: CONTINUOUS },
    {
      was: 'deflection <= from',
      becomes: 'deflection < from',
      why: 'a span of no length holds no energy',
    },
  ],
  'core/steering': [
    {
      was: 'x * A[0][0] + y * B[0][0]',
      why: 'K₂ has an empty first column, and it alone is combined',
    },
    {
      was: 'x * A[1][0] + y * B[1][0]',
      why: 'K₂ has an empty first column, and it alone is combined',
    },
    {
      was: '(first[0] + u * first[1]) / third',
      becomes: '(first[0] + u * first[1]) * third',
      why: 'only its sign is asked for',
    },
    {
      was: '(2 * a * u + b) * third',
      becomes: '(2 * a * u + b) / third',
      why: 'only its sign is asked for',
    },
  ],
  'core/student': [
    {
      was: 'degreesOfFreedom <= MANY',
      becomes: 'degreesOfFreedom < MANY',
      why: 'both ways agree to the last digits there',
    },
    {
      was: 'short(high) < 0',
      becomes: 'short(high) <= 0',
      why: 'a bracket twice as wide holds the same root',
    },
    {
      was: 'inside < 1.5 / (a + 2.5)',
      becomes: 'inside <= 1.5 / (a + 2.5)',
      why: 'the fraction settles on both sides: only later',
    },
    { was: 'a < 20', becomes: 'a <= 20', why: 'the recurrence and the series agree there' },
    { line: 'for (let m = 1; m < 10000', becomes: 'm <= 10000', why: ROUNDS },
    { was: 'Math.abs(d * c - 1) < 1e-15', why: ROUNDS },
  ],
  'core/tyre': [
    { was: '[]', becomes: '["Stryker was here"]', why: 'the first entry of a match is not read' },
  ],
  'core/uncertainty': [
    {
      was: 'moved[index]! += shift',
      becomes: 'moved[index]! -= shift',
      why: 'both ways of a central difference, and its size alone is used',
    },
  ],
  'core/viscosityIndex': [
    { was: 'at40 >= high', becomes: 'at40 > high', why: 'procedures A and B are both 100 there' },
    { was: 'high > low', becomes: 'high >= low', why: 'equal to the last digit' },
  ],
}
