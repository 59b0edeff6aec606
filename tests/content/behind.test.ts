import { expect, test } from 'vitest'
import { behind, isHeld, isNumberOrTable } from '../../src/build/behind.ts'

// counts calls in a Node of its own: some seconds
const list = behind()

test('something outside stands behind each function of the core that a calculator calls', () => {
  expect(list.functions.length).toBeGreaterThan(100)
  expect(list.functions.filter((one) => !isHeld(one)).map(({ name }) => name)).toEqual([])
})

test('each number and table of each calculator is worked by hand, or computed by the second method', () => {
  const bare = list.calculators.flatMap(({ id, outputs }) =>
    outputs.filter(isNumberOrTable).flatMap((output) => (output.worked === 0 && !output.second ? [`${id} ${output.id}`] : [])),
  )
  expect(bare).toEqual([])
})
