import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { calls } from '../../src/checks/calls.ts'
import * as core from '../../src/core/index.ts'
import { parse } from 'yaml'

const root = new URL('../../', import.meta.url)
const read = (path: string): string => readFileSync(new URL(path, root), 'utf8')
const filesIn = (folder: string): string[] =>
  readdirSync(new URL(folder, root)).map((name) => `${folder}${name}`)
const names = (text: string, name: string): boolean => new RegExp(`\\b${name}\\b`).test(text)

/** Core functions that a check against the world outside asks for. */
const checked = new Set(
  filesIn('content/checks/')
    .flatMap((path) => (parse(read(path)) as { checks: { call: string }[] }).checks)
    .flatMap(({ call }) => calls[call]?.core ?? []),
)

/** Test files of the core that state laws for arbitrary arguments. */
const lawful = filesIn('tests/core/')
  .filter((path) => path.endsWith('.test.ts') && !path.endsWith('coverage.test.ts'))
  .map(read)
  .filter((text) => text.includes('fc.property('))

const isCovered = (name: string): boolean =>
  checked.has(name) || lawful.some((text) => names(text, name))

/* Parts that the core's files hand to one another, each with the public function that is made of it: what is shown for that
   one is shown for the part. */
const PART_OF: Readonly<Record<string, string>> = {
  springCurve: 'springForce',
  curveForce: 'springForce',
  curveRate: 'springRate',
  curveEnergy: 'springEnergy',
  beforeCoilBind: 'springForce',
  gasCurve: 'gasForce',
  gasCurveForce: 'gasForce',
  gasCurveRate: 'gasRate',
  gasCurveEnergy: 'gasEnergy',
  beforeLock: 'gasForce',
  forkCurve: 'forkForce',
  forkCurveForce: 'forkForce',
  forkCurveRate: 'forkRate',
  topOutOf: 'forkForce',
  heldTravel: 'forkTravel',
  lastTravel: 'forkTravel',
  ratioPiece: 'rearWheelRate',
  rearCurve: 'rearWheelForce',
  rearCurveForce: 'rearWheelForce',
  rearCurveRate: 'rearWheelRate',
  shareOf: 'sagFromMarks',
  usableRake: 'groundTrail',
  blankAttitude: 'pose',
  takeAttitude: 'pose',
  poseOf: 'pose',
  modesBySpeed: 'linearModes',
}

const coreFile = (name: string): string =>
  filesIn('src/core/')
    .map(read)
    .find((text) => new RegExp(`^export (?:function|const|class) ${name}\\b`, 'm').test(text)) ?? ''

describe('every export of the core is shown right from outside', () => {
  test('Object.keys(core) holds no name without a published value or a law tested by property', () => {
    const bare = Object.keys(core).filter(
      (name) => !isCovered(name) && !Object.hasOwn(PART_OF, name),
    )
    expect(
      bare,
      'write a check in content/checks, or a property test in tests/core, for each of these',
    ).toEqual([])
  })

  test('PART_OF names parts that exist, each in the file of a public function that is covered by itself', () => {
    for (const [part, whole] of Object.entries(PART_OF)) {
      expect(Object.keys(core), part).toContain(part)
      expect(isCovered(whole), `${whole}, which stands for ${part}`).toBe(true)
      expect(names(coreFile(whole), part), `${part} in the file of ${whole}`).toBe(true)
    }
  })

  test('calls[…].core names functions that the core has', () => {
    const known = filesIn('src/core/').map(read).join('\n')
    for (const name of checked)
      expect(known, name).toMatch(new RegExp(`^export (?:function|const) ${name}\\b`, 'm'))
  })
})
