/** A length that is asked for: its range and usual value [mm], in whole millimetres. */
export const lengthInput = (label: string, range: readonly [number, number], standard: number) =>
  ({
    kind: 'quantity',
    label,
    quantity: 'length',
    unit: 'mm',
    range,
    step: 1,
    default: standard,
  }) as const
