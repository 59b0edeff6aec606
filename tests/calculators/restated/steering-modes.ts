import type { Restated, Told } from './state.ts'

const valueOf = (cell: unknown): number => (cell as Told).value

export const steeringModes: Restated = {
  calculator: 'steering-modes',
  rules: [
    {
      output: 'motions',
      column: 0,
      // what swings weaves; of what does not, the quickest to die out is the front steering back, the next the slow fall, and more than two topple
      must(state) {
        const rows = state.cells('motions')
        const straight = rows
          .filter(([, , , swing]) => swing === null)
          .map(([, growth]) => valueOf(growth))
          .sort((a, b) => a - b)
        return rows.map(([, growth, , swing]) => {
          if (swing !== null) return 'weave'
          return ['back', 'fall'][straight.indexOf(valueOf(growth))] ?? 'topple'
        })
      },
    },
  ],
}
