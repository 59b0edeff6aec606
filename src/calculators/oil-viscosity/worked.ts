import type { WorkedCase } from '../../machine/worked.ts'

const checks: readonly WorkedCase[] = [
  {
    title: 'The standard’s own example of a viscosity index',
    given: { known: 'at100', at40: 22.83, at100: 5.05, share: 0 },
    expect: { index: { value: 156, tolerance: 0.5 } },
    working:
      'ASTM D2270 and ISO 2909 work this example: 22.83 mm²/s at 40 °C and 5.05 at 100 °C give 156, rounded to a whole number.',
  },
  {
    title: 'A class of ±10 %',
    given: { known: 'at100', at40: 35.2, at100: 5.6, share: 0 },
    expect: { mixAt40: { value: 35.2, tolerance: 1e-9 } },
    working:
      'ISO 3448: VG 32 reaches from 28.8 to 35.2 mm²/s, so 35.2 is still VG 32; the text beside it says so.',
  },
  {
    title: 'From 40 °C down to 10 °C',
    given: { known: 'at100', at40: 32, at100: 5.36, share: 0, temperature: 10, cold: 10, warm: 40 },
    expect: { viscosity: { value: 163, tolerance: 1 }, coldRatio: { value: 5.1, tolerance: 0.05 } },
    working:
      'Worked by hand with lg lg(ν + 0.7) = A − B lg T: at 313.15 K lg lg 32.7 = 0.18028, at 373.15 K lg lg 6.06 = −0.10653; B = 0.28681 ÷ 0.07613 = 3.767. At 283.15 K: 0.18028 + 3.767 × 0.04374 = 0.34504, so ν = 10^(10^0.345) − 0.7 = 163.',
  },
  {
    title: 'Half and half is less than the mean',
    given: { known: 'at100', at40: 32, at100: 5.36, otherAt40: 15, otherAt100: 3.79, share: 50 },
    expect: { mixAt40: { value: 21.5, tolerance: 0.1 } },
    working:
      'Worked by hand on the same scale: lg lg 32.7 = 0.1803 and lg lg 15.7 = 0.0776; their mean 0.1290 belongs to 10^(10^0.1290) − 0.7 = 21.5, not 23.5.',
  },
  {
    title: 'Two oils at 20 °C, and their mixture at 100 °C',
    given: {
      known: 'at100',
      at40: 32,
      at100: 5.36,
      otherAt40: 15,
      otherAt100: 3.79,
      share: 50,
      temperature: 20,
    },
    expect: {
      one: { value: 86.8, tolerance: 0.1 },
      two: { value: 31.1, tolerance: 0.05 },
      mixAt100: { value: 4.481, tolerance: 0.002 },
    },
    core: ['viscosityAt', 'blendViscosity'],
    working:
      'Worked by hand with lg lg(ν + 0.7) = A − B lg T, T in kelvin. From 40 to 100 °C lg T grows by 0.07613, to 20 °C it falls by 0.02867. Oil one: lg lg 32.7 = 0.18028, lg lg 6.06 = −0.10653, B = 0.28681/0.07613 = 3.7674; 0.18028 + 3.7674 × 0.02867 = 0.28828, so 10^(10^0.28828) − 0.7 = 86.8. Oil two: lg lg 15.7 = 0.07768, lg lg 4.49 = −0.18559, B = 3.4583; 0.07768 + 0.09913 = 0.17681, 31.1. At 100 °C half and half: the mean of −0.10653 and −0.18559 is −0.14606, 10^(10^−0.14606) − 0.7 = 4.481.',
  },
  {
    title: 'An oil of index 100 is the one that the standard’s table measures by',
    given: { known: 'index', at40: 32, index: 100, share: 0 },
    expect: { mixAt100: { value: 5.362, tolerance: 0.001 } },
    core: ['viscosityFromIndex'],
    working:
      'ASTM D2270, table of basic values: an oil of index 100 has at 40 °C the viscosity H of its line. H is 31.40 on the line of 5.30 mm²/s at 100 °C and 32.37 on that of 5.40; 32 lies 0.60 of the 0.97 between: 5.30 + 0.0619 = 5.362.',
  },
]

export default checks
