import type { WorkedCase } from '../../machine/worked.ts'

const checks: readonly WorkedCase[] = [
  {
    title: 'Air in a 43 mm leg with 130 mm of oil height',
    given: { bike: 'middleweight-roadster', airHeight: 130, temperature: 20 },
    expect: {
      airExtended: { value: 265.7, tolerance: 0.05 },
      airFull: { value: 91.4, tolerance: 0.05 },
      lockMargin: { value: 63, tolerance: 0.05 },
      settled: { value: 35.2, tolerance: 0.2 },
      gasSettled: { value: 70.1, tolerance: 0.2 },
      'gasAtFull.low': { value: 560.9, tolerance: 0.1 },
      'gasAtFull.high': { value: 908.6, tolerance: 0.3 },
      gasAtFull: { value: 720, tolerance: 0.3 },
      forceAtFull: { value: 3150, tolerance: 0.3 },
      'stations.5.0': { value: 120, tolerance: 1e-6 },
      'stations.5.1': { value: 720, tolerance: 0.3 },
      'stations.5.2': { value: 3150, tolerance: 0.3 },
    },
    core: ['gasVolume'],
    working:
      'Worked by hand: bore 38 mm is 11.341 cm², times 13 cm is 147.4 cm³, less 56 cm³ of spring and spacer is 91.4 cm³ at full travel. A 43 mm tube is 14.522 cm²; 12 cm of travel add 174.3 cm³. 91.4 ÷ 14.522 = 6.30 cm to the lock. With its rider it stands at 35.2 mm, where the springs’ 18 · 50.2 = 904 N and the air carry 974 N: 214.58 cm³ are left, and 2 · 147.14 N · (265.70/214.58 − 1) = 70.1 N. From there to full travel the air is squeezed by 214.58/91.435 = 2.3468, after 265.70/214.58 = 1.2382 slowly: slow 294.28 · (1.2382 · 2.3468 − 1) = 560.9 N, fast 294.28 · (1.2382 · 2.3468^1.4 − 1) = 908.6, between, with 1.2, 720.0; the springs add 18 · 135 = 2430 N.',
  },
  {
    title: 'Twenty cubic centimetres left in a 38 mm bore',
    given: { bike: 'middleweight-roadster', airHeight: 130, oilAdded: 20, temperature: 20 },
    expect: { effective: { value: 112.37, tolerance: 0.005 } },
    core: ['levelChange'],
    working: 'Worked by hand: 20 cm³ ÷ 11.341 cm² = 1.763 cm. 130 − 17.63 = 112.37 mm.',
  },
  {
    title: 'A warm fork closes the air by the growth of its oil',
    given: { bike: 'middleweight-roadster', airHeight: 130, temperature: 80, oilVolume: 500 },
    expect: {
      airExtended: { value: 244.7, tolerance: 0.05 },
      lockMargin: { value: 48.5, tolerance: 0.05 },
      lockMarginWarm: { value: 48.5, tolerance: 0.05 },
    },
    working:
      'Worked by hand: 500 cm³ × 0.0007 per K × 60 K = 21.0 cm³ less air: 265.7 − 21.0 = 244.7. (91.4 − 21.0) ÷ 14.522 = 4.85 cm.',
  },
]

export default checks
