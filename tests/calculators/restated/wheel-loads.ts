import type { Restated } from './state.ts'

export const wheelLoads: Restated = {
  calculator: 'wheel-loads',
  rules: [
    {
      output: 'parts',
      column: 0,
      must: (state) => [
        'bike',
        ...['rider', 'passenger', 'luggage'].filter((id) => state.is(id) > 0),
      ],
    },
  ],
}
