import { loadCalculator } from '../../src/calculators/index.ts'
import { describe, expect, test } from 'vitest'
import WheelLoadsFigure from '../../src/calculators/wheel-loads/Figure.tsx'
import { bikeOf, payloadOf } from '../../src/bikes/bikes.ts'
import { solveStance, STANDARD_GRAVITY, wheelLoads } from '../../src/core/index.ts'
import { places } from './drawn.ts'
import { bikes, drawn, expectNear, expectSound, remarksOf, shown } from './evaluated.ts'
import { specs } from './bikes.ts'

const wheelLoadsCalculator = loadCalculator('wheel-loads')

const LOADED = { rider: 80, passenger: 70, luggage: 15 }
const ids = Object.keys(bikes)

function stanceOf(id: string) {
  const spec = specs[id]!
  return solveStance(bikeOf(spec), {
    payload: [
      payloadOf(spec.rider, 80),
      payloadOf(spec.passenger, 70),
      payloadOf(spec.luggage, 15),
    ],
  })
}

describe('wheel-loads', () => {
  test.each(ids)('wheel-loads of %s are solveStance’s, digit for digit', (id) => {
    const { frontLoad, rearLoad, frontShare, rake, wheelbase } = stanceOf(id)
    const { output } = shown(wheelLoadsCalculator, { bike: id, ...LOADED }).now
    expect({
      frontLoad: output.frontLoad,
      rearLoad: output.rearLoad,
      frontShare: output.frontShare,
      rake: output.rake,
      wheelbase: output.wheelbase,
    }).toEqual({
      frontLoad,
      rearLoad,
      frontShare,
      rake,
      wheelbase,
    })
  })

  test.each(ids)(
    'wheel-loads of %s: the parts add up to the wheels, and each to its own weight',
    (id) => {
      const { output } = shown(wheelLoadsCalculator, { bike: id, ...LOADED }).now
      const rows = output.parts as readonly (readonly [string, number, number, number])[]
      // sums of four numbers of some hundred newtons: rounding
      expectNear(
        rows.reduce((sum, row) => sum + row[1], 0),
        Number(output.frontLoad),
        1e-9,
      )
      expectNear(
        rows.reduce((sum, row) => sum + row[2], 0),
        Number(output.rearLoad),
        1e-9,
      )
      const weights = [specs[id]!.mass, 80, 70, 15].map((mass) => mass * STANDARD_GRAVITY)
      // the bike's own mass comes back from its two loads through bikeFromScales
      rows.forEach((row, index) => expectNear(row[1] + row[2], weights[index]!, 1e-8))
    },
  )

  test('the core’s wheelLoads agrees with a textbook’s motorcycle and rider', () => {
    // A-level Mechanics 2 exercise: 250 kg midway, 80 kg at 1 m behind the front wheel, base 1.4 m, g = 9.8; printed answers 1449 N and 1785 N
    const { front, rear } = wheelLoads({
      masses: [
        { mass: 250, x: 0.7, z: 0.6 },
        { mass: 80, x: 0.4, z: 1 },
      ],
      wheelbase: 1.4,
    })
    // half a newton of the last printed digit
    expectNear((front * 9.8) / STANDARD_GRAVITY, 1449, 0.5)
    expectNear((rear * 9.8) / STANDARD_GRAVITY, 1785, 0.5)
  })

  test('wheel-loads remarks tell the rider’s split, and choose the rear when the share moves by five points', () => {
    expect(remarksOf(wheelLoadsCalculator, { rider: 80 })).toMatch(
      /Of the 80 kg put aboard, the front wheel takes 37\.\d kg, 47 %/,
    )
    expect(remarksOf(wheelLoadsCalculator, { rider: 80 })).not.toMatch(/five points/)
    expect(remarksOf(wheelLoadsCalculator, LOADED)).toMatch(/five points/)
    expect(remarksOf(wheelLoadsCalculator, { rider: 0 })).toMatch(
      /The bike alone stands with 50\.0 %/,
    )
  })

  test('the wheel-loads figure draws arrows as long as the loads', () => {
    const markup = drawn(wheelLoadsCalculator, WheelLoadsFigure, LOADED)
    expectSound(markup)
    const tails = places(markup, 'line[class="shaft"]', 'y1')
    const tip = places(markup, 'line[class="ground"]', 'y1')[0]! + 2
    const { frontLoad, rearLoad } = shown(wheelLoadsCalculator, LOADED).now.output
    // before and now at the rear, then before and now at the front; hundredths of a unit on 30
    expectNear((tails[3]! - tip) / (tails[1]! - tip), Number(frontLoad) / Number(rearLoad), 1e-3)
    expect(markup).toMatch(/Rider<!-- -->? ?|Rider 80/)
  })
})
