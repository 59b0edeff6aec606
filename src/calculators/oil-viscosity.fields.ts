const viscosity = { kind: 'quantity', quantity: 'viscosity', unit: 'mm²/s' } as const
const INDEX = {
  kind: 'quantity',
  quantity: 'ratio',
  unit: '',
  range: [60, 400],
  step: 1,
  typical: [100, 200],
  typicalFrom: 'fork oils commonly state 100 to 200; plain mineral oil about 100',
} as const

export const inputs = {
  at40: {
    ...viscosity,
    label: 'Oil one at 40 °C',
    hint: 'From its data sheet, in cSt or mm²/s: the same. The number on the bottle is no viscosity.',
    range: [7.1, 200],
    step: 0.1,
    default: 32,
  },
  otherAt40: { ...viscosity, label: 'Oil two at 40 °C', range: [7.1, 200], step: 0.1, default: 15 },
  share: { kind: 'quantity', label: 'Share of oil two in the fork', quantity: 'share', unit: '%', range: [0, 100], step: 1, default: 50 },
  temperature: { kind: 'quantity', label: 'Temperature of the fork', quantity: 'temperature', unit: '°C', range: [-15, 100], step: 1, default: 20 },
  known: {
    kind: 'choice',
    label: 'The data sheets also give',
    more: true,
    options: { at100: 'viscosity at 100 °C', index: 'viscosity index' },
    default: 'index',
  },
  at100: { ...viscosity, label: 'Oil one at 100 °C', more: true, when: { known: 'at100' }, range: [2, 60], step: 0.01, default: 5.36 },
  otherAt100: { ...viscosity, label: 'Oil two at 100 °C', more: true, when: { known: 'at100' }, range: [2, 60], step: 0.01, default: 3.79 },
  index: { ...INDEX, label: 'Viscosity index of oil one', more: true, when: { known: 'index' }, default: 100 },
  otherIndex: { ...INDEX, label: 'Viscosity index of oil two', more: true, when: { known: 'index' }, default: 150 },
  cold: { kind: 'quantity', label: 'Temperature on a cold start', more: true, quantity: 'temperature', unit: '°C', range: [-15, 60], step: 1, default: 10 },
  warm: { kind: 'quantity', label: 'Temperature once warm', more: true, quantity: 'temperature', unit: '°C', range: [0, 100], step: 1, default: 40 },
} as const

export const outputs = {
  viscosity: { label: 'Viscosity in the fork', quantity: 'viscosity', unit: 'mm²/s', digits: 1, lead: true },
  isoClass: { kind: 'text', label: 'ISO class at 40 °C' },
  coldRatio: { label: 'Cold start against warm, times', quantity: 'ratio', unit: '', digits: 2, lead: true },
  mixAt40: { label: 'In the fork at 40 °C', quantity: 'viscosity', unit: 'mm²/s', digits: 1 },
  index: { label: 'Viscosity index in the fork', quantity: 'ratio', unit: '', digits: 0 },
  one: { label: 'Oil one at the fork’s temperature', quantity: 'viscosity', unit: 'mm²/s', digits: 1, more: true },
  two: { label: 'Oil two at the fork’s temperature', quantity: 'viscosity', unit: 'mm²/s', digits: 1, more: true },
  mixAt100: { label: 'In the fork at 100 °C', quantity: 'viscosity', unit: 'mm²/s', digits: 2, more: true },
} as const
