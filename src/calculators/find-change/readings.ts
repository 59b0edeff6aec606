import type { QuantityInput } from '../../machine/statement.ts'

/* What is read on the bike itself: the gaps that a change uses up, and where it stands now. */

const MM = { kind: 'quantity', quantity: 'length', unit: 'mm', more: true } as const

const gap = <
  const T extends Pick<QuantityInput, 'label' | 'range' | 'default' | 'hint' | 'procedure'>,
>(
  input: T,
) => ({ ...MM, step: 1, unmeasured: 0, ...input }) as const

/** Gaps of the invented bikes are those of the cautions' own examples. */
export const clearances = {
  frontGap: gap({
    label: 'Gap above the front tyre, fork fully in',
    hint: '0 while nobody has measured it: no way then raises the tubes.',
    range: [0, 100],
    default: 25,
    procedure: 'check-full-travel-clearance',
  }),
  rearGap: gap({
    label: 'Gap above the rear tyre, rear fully in',
    hint: '0 while nobody has measured it: no way then shortens the shock.',
    range: [0, 100],
    default: 20,
    procedure: 'check-full-travel-clearance',
  }),
  gapKept: {
    ...MM,
    label: 'Gap that must be left',
    hint: 'The maker’s manual decides. Tyres grow at speed, and parts flex.',
    range: [5, 50],
    step: 1,
    default: 10,
  },
  tubeAbove: gap({
    label: 'Tube above the upper yoke',
    hint: 'Its own edge, not the cap. 0 while not measured: no way then lowers the tubes.',
    range: [0, 60],
    default: 5,
    procedure: 'change-ride-height',
  }),
} as const

const read = <const T extends Pick<QuantityInput, 'label' | 'procedure'>>(input: T) =>
  ({ ...MM, range: [1, 200], step: 0.5, optional: true, empty: 'not measured', ...input }) as const

const FRONT = 'measure-front-sag'
const REAR = 'measure-rear-sag'

/** Sags as measured, to which the bike is fitted first. */
export const measured = {
  frontStaticRead: read({ label: 'Front static sag, as measured', procedure: FRONT }),
  frontRiderRead: read({ label: 'Front sag with the rider, as measured', procedure: FRONT }),
  rearStaticRead: read({ label: 'Rear static sag, as measured', procedure: REAR }),
  rearRiderRead: read({ label: 'Rear sag with the rider, as measured', procedure: REAR }),
  readWithin: {
    ...MM,
    label: 'Each measured sag is within',
    range: [0.5, 10],
    step: 0.5,
    default: 2,
  },
} as const
