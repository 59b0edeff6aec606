import type { WorkedCase } from '../../machine/worked.ts'

/** Hand-worked cases of the dive calculator. */
const checks: readonly WorkedCase[] = [
  {
    title: 'No brake: the bike stands as it does at rest',
    given: { deceleration: 0, rider: 80 },
    expect: {
      frontTravel: { value: 35.2, tolerance: 0.2 },
      transferPart: { value: 0, tolerance: 0.001 },
      brakePart: { value: 0, tolerance: 0.001 },
    },
    working:
      'Worked by hand: 137.8 kg on the wheel less 28 kg unsprung, times 9.807 and cos 25.2°, is 974 N along the fork. At 35.2 mm the springs give 18 · (15 + 35.2) = 904 N and the gas 2 · 14.52 cm² · 101 325 Pa · 51.1/214.6 = 70 N.',
  },
  {
    title: 'A stop of 0.6 g: load moved forward is mass × deceleration × height ÷ wheelbase',
    given: { deceleration: 0.6, rider: 80 },
    expect: {
      frontLoad: { value: 215, tolerance: 3 },
      brakePart: { value: 549, tolerance: 12 },
      transferPart: { value: 713, tolerance: 30 },
      rearLoad: { value: 65, tolerance: 3 },
      pitch: { value: -3.3, tolerance: 0.2 },
      rearTravel: { value: 0, tolerance: 1e-9 },
      travelShare: { value: 74, tolerance: 1 },
      frontGrip: { value: 0.78, tolerance: 0.02 },
    },
    core: ['diveParts'],
    working:
      'Worked by hand with the height of 620 mm of bike and rider and 1390 mm of wheelbase: 280 · 0.6 · 620/1390 = 75 kg on top of 138 is 213; the centre also comes forward as the nose goes down, 2 kg more. Brake along the fork: front 54 mm in and rear 38 mm out pitch the bike by (54 · cos 25° + 38)/1420 rad = 3.5°, so the rake is 21.7°, and (280 − 28) · 5.884 · sin 21.7° = 549 N. No spring rate is in either. Load moved: 78 kg · 9.807 · cos 21.7° = 711 N along the fork.',
  },
  {
    title: 'Rear wheel light: where all the weight is in front',
    given: { rider: 80 },
    expect: { liftDeceleration: { value: 1.1, tolerance: 0.06 } },
    working:
      'Worked by hand: the rear carries nothing when deceleration in g is the distance from the front contact back to the centre over its height: about 680 mm ÷ 620 mm = 1.10, both with the nose down.',
  },
]

export default checks
