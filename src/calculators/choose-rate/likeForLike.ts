import { chooseRate, inHand, oilRiseLeaving, rateLeaving, withOilRaised } from '../../core/index.ts'
import type { Interval } from '../../units/interval.ts'
import type { SetUp } from './fitted.ts'
import { asFitted, choiceOf } from './prepared.ts'
import type { Prepared } from './prepared.ts'

/** A step of the shelf, and a step of oil, whose sizes are told beside each other [N/m, m]. */
const RATE_STEP = 500
const OIL_STEP = 10e-3

/** A rate [N/m] in the same proportion to the fitted one as it was found, with the fitted one's ±. */
function inProportion(rate: number, fitted: number | (Interval & { value: number })) {
  if (typeof fitted === 'number') return rate
  const share = rate / fitted.value
  return { value: rate, low: fitted.low * share, high: fitted.high * share }
}

/** A share that is 0 but for rounding is 0. */
const roundedOff = (share: number): number => (Math.abs(share) < 1e-9 ? 0 : share)

export const range = ([low, high]: readonly [number, number]): Interval => ({ low, high })

/** What the fitted springs leave, which rate leaves the rider now the same, and what oil would do instead. */
export function likeForLike({ input, setUp, deceleration }: Prepared) {
  const { fitted } = setUp
  if (fitted === null)
    return {
      inHand: null,
      inHandNow: null,
      sameRate: null,
      sameOver: null,
      oilInstead: null,
      oilTen: null,
      stepMore: null,
    }
  const left = (rider: SetUp['rider']) =>
    inHand({ ...asFitted(input, setUp, rider), braking: { ...rider, deceleration } })
  const [suited, now] = [left(setUp.standard), left(setUp.rider)]
  const choice = choiceOf(input, setUp, deceleration)
  const least = (bike: SetUp['bike'], rate: number): number =>
    chooseRate({ ...choice, bike, rates: [rate] })[0]!.reserve[0]
  const there = least(setUp.bike, fitted.rate)
  // a fork on its stop leaves nothing, whatever it is compared with
  const between = suited.stop !== 'bottomed' && suited.stop !== 'coilBound'
  const same = between ? rateLeaving(choice, suited.reserve[0]) : null
  const air = setUp.bike.fork.legs[0]?.gas?.airHeight ?? 0
  return {
    inHand: range(suited.reserve),
    inHandNow: range(now.reserve),
    sameRate: same === null ? null : inProportion(same.rate, fitted.known),
    sameOver: same === null ? null : roundedOff(same.rate / fitted.rate - 1),
    oilInstead: between ? oilRiseLeaving(choice, fitted.rate, suited.reserve[0]) : null,
    oilTen:
      air > 2 * OIL_STEP ? least(withOilRaised(setUp.bike, OIL_STEP), fitted.rate) - there : null,
    stepMore: least(setUp.bike, fitted.rate + RATE_STEP) - there,
  }
}
