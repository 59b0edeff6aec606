import type { WorkedCase } from '../../machine/worked.ts'

const checks: readonly WorkedCase[] = [
  {
    title: 'Air in a 43 mm leg with 130 mm of oil height',
    given: { bike: 'middleweight-roadster', airHeight: 130, temperature: 20 },
    expect: {
      airExtended: { value: 265.7, tolerance: 0.05 },
      airFull: { value: 91.4, tolerance: 0.05 },
      lockMargin: { value: 63, tolerance: 0.05 },
    },
    working:
      'Worked by hand: bore 38 mm is 11.341 cm², times 13 cm is 147.4 cm³, less 56 cm³ of spring and spacer is 91.4 cm³ at full travel. A 43 mm tube is 14.522 cm²; 12 cm of travel add 174.3 cm³. 91.4 ÷ 14.522 = 6.30 cm to the lock.',
  },
  {
    title: 'Twenty cubic centimetres left in a 38 mm bore',
    given: { bike: 'middleweight-roadster', airHeight: 130, oilAdded: 20, temperature: 20 },
    expect: { effective: { value: 112.37, tolerance: 0.005 } },
    working: 'Worked by hand: 20 cm³ ÷ 11.341 cm² = 1.763 cm. 130 − 17.63 = 112.37 mm.',
  },
  {
    title: 'A warm fork closes the air by the growth of its oil',
    given: { bike: 'middleweight-roadster', airHeight: 130, temperature: 80, oilVolume: 500 },
    expect: {
      airExtended: { value: 244.7, tolerance: 0.05 },
      lockMargin: { value: 48.5, tolerance: 0.05 },
    },
    working:
      'Worked by hand: 500 cm³ × 0.0007 per K × 60 K = 21.0 cm³ less air: 265.7 − 21.0 = 244.7. (91.4 − 21.0) ÷ 14.522 = 4.85 cm.',
  },
]

export default checks
