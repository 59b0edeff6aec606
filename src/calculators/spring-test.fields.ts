export const inputs = {
  rows: {
    kind: 'table',
    label: 'Readings',
    hint: 'Type them, or paste two columns: length, then force.',
    procedure: 'test-a-spring',
    rows: [2, 60],
    columns: [
      { id: 'length', label: 'Length', quantity: 'length', unit: 'mm', range: [5, 700] },
      { id: 'force', label: 'Force', quantity: 'force', unit: 'N', range: [0, 20000] },
    ],
    default: [
      [330, 172],
      [310, 357],
      [290, 533],
      [270, 716],
      [250, 893],
      [230, 1080],
    ],
  },
  fit: { kind: 'choice', label: 'Look for', options: { line: 'one rate', two: 'two rates' }, default: 'line' },
  freeLength: {
    kind: 'quantity',
    label: 'Free length',
    hint: 'Standing free. Two rates need it; one rate finds it for itself.',
    quantity: 'length',
    unit: 'mm',
    range: [10, 700],
    step: 0.5,
    default: 350,
    when: { fit: 'two' },
  },
  lengthPlusMinus: { kind: 'quantity', label: 'Each length is within ±', quantity: 'length', unit: 'mm', range: [0, 5], step: 0.1, default: 0.5, more: true },
  forcePlusMinus: { kind: 'quantity', label: 'Each force is within ±', quantity: 'force', unit: 'N', range: [0, 200], step: 1, default: 5, more: true },
} as const

export const outputs = {
  rate: { label: 'Rate (± covers about 95 %)', quantity: 'rate', unit: 'N/mm', digits: 2, lead: true },
  within: { label: 'Its ± as a share', quantity: 'share', unit: '%', digits: 1 },
  secondRate: { label: 'Rate once the close coils touch', quantity: 'rate', unit: 'N/mm', digits: 2 },
  closesAt: { label: 'Close coils touch after', quantity: 'length', unit: 'mm', digits: 0 },
  kind: { kind: 'text', label: 'What the readings show', lead: true },
  rateError: { label: 'Standard error of the rate', quantity: 'rate', unit: 'N/mm', digits: 3 },
  scatter: { label: 'Scatter of a reading about the fit', quantity: 'force', unit: 'N', digits: 1 },
  worst: { label: 'Largest miss', quantity: 'force', unit: 'N', digits: 1, signed: true, more: true },
  foundLength: { label: 'Length at which the line reaches no force', quantity: 'length', unit: 'mm', digits: 1, more: true },
  rSquared: { label: 'r²', quantity: 'ratio', unit: '', digits: 5, more: true },
  misses: {
    kind: 'table',
    label: 'Each reading against the fit',
    columns: [
      { id: 'length', label: 'Length', quantity: 'length', unit: 'mm', digits: 1 },
      { id: 'force', label: 'Force', quantity: 'force', unit: 'N', digits: 0 },
      { id: 'miss', label: 'Misses the fit by', quantity: 'force', unit: 'N', digits: 1 },
    ],
  },
} as const
