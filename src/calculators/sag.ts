import { sagFromMarks } from '../core/index.ts'
import { defineCalculator } from './define.ts'

export default defineCalculator({
  id: 'sag',
  version: 1,
  title: 'Sag from three readings',
  question: 'Where does it sit?',
  answers: 'How far the bike sinks from full extension, and how sure the reading is.',
  assumes: ['The bike stands upright on level ground.', 'The rider wears riding gear and sits in the riding posture.'],
  leavesOut: ['Tyre squash: a tyre of 180 N/mm under 1.2 kN sits about 6.7 mm lower, and none of it is sag.'],
  inputs: {
    extended: { kind: 'quantity', label: 'Exposed tube, wheel hanging', quantity: 'length', unit: 'mm', range: [40, 400], step: 0.5, default: 150, procedure: 'measure-front-sag' },
    settledDown: { kind: 'quantity', label: 'Exposed tube, pushed down and let rise', quantity: 'length', unit: 'mm', range: [10, 400], step: 0.5, default: 112, procedure: 'measure-front-sag' },
    settledUp: { kind: 'quantity', label: 'Exposed tube, lifted and let sink', quantity: 'length', unit: 'mm', range: [10, 400], step: 0.5, default: 118, procedure: 'measure-front-sag' },
    travel: { kind: 'quantity', label: 'Full travel', quantity: 'length', unit: 'mm', range: [50, 350], step: 1, default: 120, typical: [110, 140], typicalFrom: 'common practice for road bikes' },
  },
  outputs: {
    sag: { label: 'Sag', quantity: 'length', unit: 'mm', digits: 1, lead: true },
    share: { label: 'Share of travel', quantity: 'share', unit: '%', digits: 0 },
    frictionBand: { label: 'Friction band', quantity: 'length', unit: 'mm', digits: 1 },
  },
  compute({ extended, settledDown, settledUp, travel }) {
    const { sag, frictionBand, share } = sagFromMarks({ extended, settledDown, settledUp, travel })
    return { sag: { value: sag, low: sag - frictionBand / 2, high: sag + frictionBand / 2 }, share: share ?? null, frictionBand }
  },
  remarks({ output, say }) {
    const band = output.frictionBand
    return [{ kind: 'reading', text: `Friction holds the bike anywhere within ${say.quantity(typeof band === 'number' ? band : 0, 'mm', 1)}.` }]
  },
  checks: [],
})
