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
      wanted: 20,
      solidLength: 180,
      range: 15,
      step: 1,
    },
    expect: {
      preload: { value: 15, tolerance: 1e-6 },
      spacer: { value: 130, tolerance: 1e-6 },
      screw: { value: 7, tolerance: 1e-6 },
      capForce: { value: 135, tolerance: 1e-6 },
      frontTravel: { value: 18.72, tolerance: 0.03 },
      wantedTravel: { value: 14.21, tolerance: 0.03 },
      wantedCapForce: { value: 180, tolerance: 1e-6 },
      bindMargin: { value: 20, tolerance: 1e-6 },
      wantedBindMargin: { value: 15, tolerance: 1e-6 },
      fullTravelForce: { value: 2990.9, tolerance: 0.1 },
      'settings.0.1': { value: 8, tolerance: 1e-6 },
      'settings.7.2': { value: 0, tolerance: 1e-6 },
      'settings.15.1': { value: 23, tolerance: 1e-6 },
      'settings.0.2': { value: -6.28, tolerance: 0.05 },
    },
    core: ['forkStack', 'spacerFor'],
    working:
      'Worked by hand: 335 + 125 + 2 + 24 + 7 turns of 1 mm = 493 mm in a depth of 478 mm, so 15 mm of preload. 9 N/mm × 15 mm = 135 N on the cap. 20 mm take a spacer 5 mm longer and press 180 N. The coils touch after 335 − 180 = 155 mm: less 15 of preload and 120 of travel, 20 mm are left, and 15 with 20 of preload. Bike alone (100 − 28) kg × 9.807 × cos 24.9° = 640.5 N along the fork: at 18.72 mm the springs give 18 × 33.72 = 607.0 and the air 2 × 147.14 × (265.70/238.51 − 1) = 33.5 N; with 20 mm of preload at 14.21 mm 18 × 34.21 = 615.8 and 2 × 147.14 × (265.70/245.06 − 1) = 24.8 N. Full travel: 18 × 135 = 2430 N and 2 × 147.14 × (265.70/91.435 − 1) = 560.9 N of air. Fully out 8 mm of preload is 7 less: at 25.00 mm 18 × 33.00 = 594.0 and the air 46.6 N, so it stands 6.28 mm lower. Fully in, 15 turns, it is 23 mm.',
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
