const length = (label: string, range: readonly [number, number], step: number, standard: number, hint: string) =>
  ({ kind: 'quantity', label, hint, quantity: 'length', unit: 'mm', range, step, default: standard, procedure: 'test-a-spring' }) as const
const plusMinus = (label: string, standard: number, most: number, step: number) =>
  ({ kind: 'quantity', label, quantity: 'length', unit: 'mm', range: [0, most], step, default: standard, more: true }) as const

export const inputs = {
  wireDiameter: length('Wire diameter', [2, 20], 0.05, 4.5, 'Bare wire: scrape the paint off first.'),
  outerDiameter: length('Outside diameter of the coils', [10, 150], 0.1, 27.5, 'Across the coils, from outside to outside.'),
  totalCoils: {
    kind: 'quantity',
    label: 'Coils in all',
    hint: 'From one wire end to the other, part turns too.',
    quantity: 'coils',
    unit: 'coils',
    range: [3, 80],
    step: 0.25,
    default: 40,
    procedure: 'test-a-spring',
  },
  freeLength: length('Free length', [40, 700], 1, 350, 'Standing on a flat plate, no load.'),
  deflection: {
    kind: 'quantity',
    label: 'Most it is squeezed on the bike',
    hint: 'Preload and full travel together; at a shock, preload and stroke.',
    quantity: 'length',
    unit: 'mm',
    range: [1, 400],
    step: 1,
    default: 135,
    more: true,
  },
  material: {
    kind: 'choice',
    label: 'Wire',
    options: { drawn: 'cold-drawn steel', tempered: 'oil-tempered steel', stainless: 'stainless steel', unknown: 'steel, I don’t know which' },
    default: 'unknown',
    more: true,
  },
  ends: {
    kind: 'choice',
    label: 'Ends',
    options: { closedGround: 'closed and ground flat', closed: 'closed, not ground', plain: 'cut, not closed' },
    default: 'closedGround',
    more: true,
  },
  deadCoils: {
    kind: 'quantity',
    label: 'Coils that do not work',
    hint: 'The end coils that lie on their neighbours: commonly one at each end.',
    quantity: 'coils',
    unit: 'coils',
    range: [0, 6],
    step: 0.25,
    default: 2,
    typical: [1.5, 2.5],
    typicalFrom: 'common practice, no published source',
    more: true,
  },
  wirePlusMinus: plusMinus('Wire is within ±', 0.05, 0.5, 0.01),
  outerPlusMinus: plusMinus('Outside diameter is within ±', 0.1, 2, 0.05),
  coilsPlusMinus: {
    kind: 'quantity',
    label: 'Working coils are within ±',
    quantity: 'coils',
    unit: 'coils',
    range: [0, 2],
    step: 0.05,
    default: 0.25,
    more: true,
  },
} as const

export const outputs = {
  rate: { label: 'Rate (± covers about 95 %)', quantity: 'rate', unit: 'N/mm', digits: 2, lead: true },
  margin: { label: 'Left before the coils touch (±)', quantity: 'length', unit: 'mm', digits: 0, lead: true },
  solid: { label: 'Length with all coils touching', quantity: 'length', unit: 'mm', digits: 1 },
  wireShare: { label: 'Rate from the wire’s ± alone', quantity: 'share', unit: '%', digits: 1 },
  stress: { label: 'Shear stress when squeezed most', quantity: 'stress', unit: 'MPa', digits: 0 },
  force: { label: 'Force when squeezed most', quantity: 'force', unit: 'N', digits: 0 },
  activeCoils: { label: 'Coils that work', quantity: 'coils', unit: 'coils', digits: 2, more: true },
  index: { label: 'Spring index, mean coil over wire', quantity: 'ratio', unit: '', digits: 1, more: true },
  outerShare: { label: 'Rate from the outside diameter’s ± alone', quantity: 'share', unit: '%', digits: 1, more: true },
  coilsShare: { label: 'Rate from the count’s ± alone', quantity: 'share', unit: '%', digits: 1, more: true },
} as const
