import type { WorkedCase } from '../../machine/worked.ts'

const checks: readonly WorkedCase[] = [
  {
    title: 'A stack that fills the tube with 15 mm to spare',
    given: {
      tubeDepth: 478,
      capReach: 24,
      springLength: 335,
      spacerLength: 125,
      washers: [[2]],
      turnsIn: 7,
      thread: 'M20x1',
      rate: 9,
      wanted: 15,
    },
    expect: {
      preload: { value: 15, tolerance: 1e-6 },
      spacer: { value: 125, tolerance: 1e-6 },
      screw: { value: 7, tolerance: 1e-6 },
      capForce: { value: 135, tolerance: 1e-6 },
    },
    working:
      'Worked by hand: 335 + 125 + 2 + 24 + 7 turns of 1 mm = 493 mm in a depth of 478 mm, so 15 mm of preload. 9 N/mm × 15 mm = 135 N on the cap.',
  },
  {
    title: 'A spring 30 mm shorter in the same tube hangs loose',
    given: {
      tubeDepth: 478,
      capReach: 24,
      springLength: 305,
      spacerLength: 125,
      washers: [[2]],
      turnsIn: 7,
      thread: 'M20x1',
      rate: 9,
      wanted: 15,
    },
    expect: {
      preload: { value: -15, tolerance: 1e-6 },
      spacer: { value: 155, tolerance: 1e-6 },
      capForce: { value: 0, tolerance: 1e-9 },
    },
    working:
      'Worked by hand: 305 + 125 + 2 + 24 + 7 = 463 mm, 15 mm short of 478 mm. For 15 mm of preload the spacer must be 478 + 15 − 305 − 2 − 24 − 7 = 155 mm.',
  },
  {
    title: 'Five turns of a fine M10 thread',
    given: { turnsIn: 5, thread: 'M10x1.25' },
    expect: { screw: { value: 6.25, tolerance: 1e-6 } },
    working: 'ISO 261: M10 × 1.25 has a pitch of 1.25 mm. 5 × 1.25 = 6.25 mm.',
  },
]

export default checks
