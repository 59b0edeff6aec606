import { describe, expect, test } from 'vitest'
import { symptom } from '../../src/build/symptomSchema.ts'
import { stillNames } from '../../src/drawing/stills.ts'
import { isCalculatorId } from '../../src/calculators/index.ts'
import { listed, procedures } from './entries.ts'

/* What is felt, and where it leads: to the step that tests it, past a stop, with the folk remedy answered. */

const symptoms = listed('symptoms.yaml').map((each) => symptom.parse(each))
const steps = new Map(procedures().map(({ id, steps: own }) => [id, own.map((step) => step.id)]))

test('are those that people come with', () => {
  // as riders put them; each was missing once
  const wanted = ['weaves-at-speed', 'steering-catches', 'bar-not-square', 'front-chatters-in-turns', 'rear-hops-on-brakes', 'stands-up-on-brakes', 'front-feels-vague', 'fork-creaks', 'clicker-does-nothing', 'adjuster-seized', 'seat-too-high', 'rear-bottoms', 'headlamp-high', 'brake-drags', 'tyre-cupping', 'pulls-to-one-side', 'shudders-on-brakes', 'rear-knocks', 'rear-sinks']
  expect(wanted.filter((id) => !symptoms.some((symptom) => symptom.id === id))).toEqual([])
  expect(new Set(symptoms.map(({ id }) => id)).size).toBe(symptoms.length)
})

describe.each(symptoms)('$id', ({ also, picture, told, causes, cautions, stop }) => {
  test('leads each cause to a step that exists, or to a calculator', () => {
    const lost = causes.filter(({ procedure, step, calculator }) => (procedure === undefined ? calculator === undefined || !isCalculatorId(calculator) : !steps.get(procedure)?.includes(step ?? '')))
    // sitting on another seat is no procedure of this site
    expect(lost.map(({ cause }) => cause).filter((cause) => cause !== 'The seat itself is high or wide')).toEqual([])
    expect(causes.length).toBeGreaterThan(1)
  })
  test('has a picture, other words, a folk remedy answered, a stop and what to be careful of', () => {
    expect(stillNames).toContain(picture)
    expect(also.length).toBeGreaterThan(2)
    expect(told.filter(({ says, answer }) => says.length > 8 && answer.length > 60).length).toBeGreaterThan(0)
    expect(stop).toMatch(/(do not ride|leave it|do not park).*(hand over to a workshop|have the tyre changed|take load off)/)
    expect(cautions.length).toBeGreaterThan(0)
  })
})

test('tyres, bearings and play are looked at before a spring or oil is bought', () => {
  const CHEAP = /tyre|bearing|play|pressure|seal|strikes|leak/i
  const DEAR = /spring(s)? (is|are) (soft|stiff)|oil (height|is|than)/i
  const late = symptoms.filter(({ causes }) => {
    const dear = causes.findIndex(({ cause }) => DEAR.test(cause))
    return dear >= 0 && causes.some(({ cause }, index) => index > dear && /tyre|head bearings|brake drags/i.test(cause) && CHEAP.test(cause))
  })
  expect(late.map(({ id }) => id)).toEqual([])
})
