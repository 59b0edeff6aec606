import { above, below } from './state.ts'
import type { Restated } from './state.ts'

/** Grades of ISO 3448 whose middle is not their name [mm²/s]. */
const MIDDLES: Readonly<Record<number, number>> = { 2: 2.2, 3: 3.2, 5: 4.6, 7: 6.8 }
const GRADES = [
  2, 3, 5, 7, 10, 15, 22, 32, 46, 68, 100, 150, 220, 320, 460, 680, 1000, 1500, 2200, 3200,
]

export const oilViscosity: Restated = {
  calculator: 'oil-viscosity',
  rules: [
    {
      output: 'isoClass',
      // a grade reaches a tenth either way of its middle, limits included
      must(state) {
        const at40 = state.told('mixAt40')!.value
        const found = GRADES.find((grade) => {
          const middle = MIDDLES[grade] ?? grade
          return !below(at40, 0.9 * middle) && !above(at40, 1.1 * middle)
        })
        return found === undefined ? 'between' : `vg${found}`
      },
    },
  ],
}
