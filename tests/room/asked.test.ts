import { expect, test } from 'vitest'
import { drawQuestion } from '../../components/room/asked.ts'
import { sliderOf } from '../../components/room/slider.ts'
import { calculatorIds } from '../../src/calculators/index.ts'
import { loadTopics } from '../../src/calculators/exercises.ts'
import { IMPERIAL, METRIC } from '../../src/units/choice.ts'
import { bikes } from '../calculators/bikes.ts'

const topics = await loadTopics(calculatorIds)

test.each(topics.map((topic) => [topic.id, topic] as const))(
  'drawQuestion gives %s a question with three or four answers, one right, and a slider to show it with',
  (id, topic) => {
    const opened = { id, given: {}, held: null, bikes }
    const drawn = drawQuestion(topic, opened, { seed: 1, choice: METRIC })
    expect(drawn).not.toBeNull()
    const { asked, shown } = drawn!
    expect(asked.options.length).toBeGreaterThanOrEqual(3)
    expect(asked.options.length).toBeLessThanOrEqual(4)
    expect(asked.options.filter(({ right }) => right).length).toBe(1)
    expect(sliderOf(topic.calculator, shown, topic.exercises)).not.toBeNull()
    expect(shown.draws!.length).toBeGreaterThan(0)
  },
)

test('drawQuestion asks in the reader’s units', () => {
  const sag = topics.find(({ id }) => id === 'sag')!
  const drawn = drawQuestion(
    sag,
    { id: 'sag', given: {}, held: null, bikes },
    { seed: 3, choice: IMPERIAL },
  )
  expect(drawn!.asked.ask).toMatch(/\d\u00a0in/)
})
