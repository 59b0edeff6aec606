import { solveStance, wheelLoads } from '../core/index.ts'
import type { PointMass, Stance } from '../core/index.ts'
import { bikePicture } from './bike-picture.ts'
import type { BikePicture } from './bike-picture.ts'
import { bikeOf, geometryOf } from './bikes.ts'
import type { BikeSpec } from './bikes.ts'
import { defineCalculator } from './define.ts'
import type { Cell, Remark } from './define.ts'
import type { Say } from './say.ts'
import { luggageMass, passengerMass, riderMass } from './whole-bike.fields.ts'
import { aboard } from './whole-bike.ts'

interface Given {
  bike: BikeSpec
  rider: number
  passenger: number
  luggage: number
}

interface Results {
  frontLoad: number
  rearLoad: number
  frontShare: number
}

/** Five points of share decide between neighbouring fork springs: about 4 % of the rate, and springs are sold in steps of about 5 %. */
const SHARE_THAT_MATTERS = 0.05

const stand = ({ bike, ...masses }: Given): Stance => solveStance(bikeOf(bike), { payload: aboard(bike, masses) })

/** What one mass puts on each wheel [N], standing where the loaded bike stands. */
function loadsOf(stance: Stance, { mass, x, z }: PointMass): { front: number; rear: number } {
  return wheelLoads({ masses: [{ mass, ...stance.toGround({ x, z }) }], wheelbase: stance.wheelbase })
}

function rows(given: Given, stance: Stance): Cell[][] {
  const loads = aboard(given.bike, given).map(({ name, ...mass }) => ({ name, ...loadsOf(stance, mass) }))
  const bike = {
    name: 'Bike alone',
    front: stance.frontLoad - loads.reduce((sum, { front }) => sum + front, 0),
    rear: stance.rearLoad - loads.reduce((sum, { rear }) => sum + rear, 0),
  }
  return [bike, ...loads].map(({ name, front, rear }) => [name, front, rear, front / (front + rear)])
}

function remarks({ input, output, before, say }: { input: Given; output: Results; before?: { output: Results }; say: Say }): Remark[] {
  const list: Remark[] = []
  const added = input.rider + input.passenger + input.luggage
  if (before && added > 0) {
    const [front, rear] = [output.frontLoad - before.output.frontLoad, output.rearLoad - before.output.rearLoad]
    const share = front / (front + rear)
    list.push({
      kind: 'reading',
      text: `Of the ${say.quantity(front + rear, 'kg load', 0)} put aboard, the front wheel takes ${say.quantity(front, 'kg load', 1)}, ${say.quantity(share, '%', 0)}. The front share goes from ${say.quantity(before.output.frontShare, '%', 1)} to ${say.quantity(output.frontShare, '%', 1)}.`,
    })
    if (before.output.frontShare - output.frontShare > SHARE_THAT_MATTERS) {
      list.push({
        kind: 'reading',
        text: `The share moved by more than five points. Choose rear preload first: the back has taken ${say.quantity(1 - share, '%', 0)} of what was put aboard.`,
      })
    }
  } else {
    list.push({ kind: 'reading', text: `The bike alone stands with ${say.quantity(output.frontShare, '%', 1)} of its weight on the front wheel.` })
  }
  if (output.frontLoad < 0) list.push({ kind: 'limit', text: 'The front wheel would lift: so much mass behind the rear axle can’t be carried.' })
  list.push({
    kind: 'next',
    text: 'Weigh each wheel on its own scale, both scales level, rider aboard in riding posture. The maker’s plate gives the most that each axle and the whole bike may carry.',
  })
  if (input.rider > 0)
    list.push({ kind: 'caution', caution: 'bike-held-upright-with-rider', text: 'For the weighing with a rider, one helper holds the bike upright.' })
  return list
}

export default defineCalculator({
  id: 'wheel-loads',
  version: 1,
  title: 'Wheel loads',
  question: 'What happens on the brakes?',
  answers: 'What bike, rider, passenger and luggage each put on the front and the rear wheel.',
  assumes: [
    'The bike stands upright and at rest on level ground, where its springs let it settle.',
    'Each person is one mass at a fixed place: a crouch or straight arms move it by several centimetres.',
  ],
  leavesOut: [
    'Air: at road speed drag and lift shift load to the rear.',
    'Fuel: 10 kg of it, six tenths of the way to the front axle, moves the share by less than half a point.',
  ],
  inputs: {
    bike: { kind: 'bike', label: 'Bike', default: 'middleweight-roadster' },
    rider: riderMass,
    passenger: passengerMass,
    luggage: luggageMass,
  },
  outputs: {
    frontLoad: { label: 'Front load', quantity: 'load', unit: 'kg load', digits: 1, lead: true },
    rearLoad: { label: 'Rear load', quantity: 'load', unit: 'kg load', digits: 1, lead: true },
    frontShare: { label: 'Front share', quantity: 'share', unit: '%', digits: 1 },
    parts: {
      kind: 'table',
      label: 'What each puts on the wheels',
      columns: [
        { kind: 'text', id: 'part', label: 'Part' },
        { id: 'front', label: 'Front', quantity: 'load', unit: 'kg load', digits: 1 },
        { id: 'rear', label: 'Rear', quantity: 'load', unit: 'kg load', digits: 1 },
        { id: 'share', label: 'Front share', quantity: 'share', unit: '%', digits: 0 },
      ],
    },
    rake: { label: 'Rake, as it stands', quantity: 'angle', unit: '°', digits: 2, more: true },
    wheelbase: { label: 'Wheelbase, as it stands', quantity: 'length', unit: 'mm', digits: 1, more: true },
  },
  compute(given) {
    const stance = stand(given)
    const { frontLoad, rearLoad, frontShare, rake, wheelbase } = stance
    return { frontLoad, rearLoad, frontShare, parts: rows(given, stance), rake, wheelbase }
  },
  baseline: () => ({ rider: 0, passenger: 0, luggage: 0 }),
  picture(given): BikePicture {
    const stance = stand(given)
    return {
      ...bikePicture(given.bike, geometryOf(given.bike), stance),
      aboard: aboard(given.bike, given).map((place) => ({ ...place, ...stance.toGround(place) })),
    }
  },
  remarks: (context) => remarks(context as never),
})
