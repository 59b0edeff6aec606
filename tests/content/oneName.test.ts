import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { loadCalculator } from '../../src/calculators/index.ts'
import cgHeight from '../../src/calculators/cg-height/statement.ts'
import { captions } from '../../src/drawing/stills/captions.ts'
import { shown } from '../calculators/evaluated.ts'
import { procedures } from './entries.ts'

const wheelLoads = loadCalculator('wheel-loads')
const { inputs } = cgHeight

const words = (folder: string): [string, string][] =>
  readdirSync(`content/${folder}`)
    .filter((name) => name.endsWith('.mdx'))
    .map((name) => [`${folder}/${name}`, readFileSync(`content/${folder}/${name}`, 'utf8')])

const all = [
  ...['chapters', 'procedures', 'cautions', 'calculators'].flatMap(words),
  ...Object.entries(captions).map(([id, text]): [string, string] => [`caption ${id}`, text]),
]

describe('one thing has one name and one number everywhere', () => {
  test('the tube that shows between seal and yoke is the exposed tube', () => {
    const others = /\b(bare|sliding|naked) (fork )?tube\b/i
    expect(all.filter(([, text]) => others.test(text)).map(([where]) => where)).toEqual([])
  })

  test('the rod that a cartridge fork’s cap is screwed to is the cartridge rod', () => {
    const wrong = /damper rod[^.]*\b(cap|locknut|rebound)\b|\b(cap|locknut)\b[^.]*\bscrewed to the damper rod/i
    const found = all.flatMap(([where, text]) => text.split('\n').filter((line) => wrong.test(line)).map((line) => `${where}: ${line}`))
    // the list of signs from outside names caps and the damper rod's bolt in one sentence each
    expect(found.filter((line) => !/bolt in the foot|foot of its leg/.test(line))).toEqual([])
  })

  test('the rear is raised by as much in the procedure, the calculator and the chapter', () => {
    const lift = inputs.lift.default
    const weigh = procedures().find(({ id }) => id === 'weigh-the-bike')!
    expect(weigh.tools.join()).toContain(`a platform about ${String(lift)} mm high`)
    for (const file of ['procedures/weigh-the-bike', 'calculators/cg-height', 'chapters/wheel-loads']) {
      const text = readFileSync(`content/${file}.mdx`, 'utf8')
      expect(text, file).toMatch(new RegExp(`(raised by|rose by|axle) ${String(lift)} mm`))
      expect(text, file).not.toContain('400 mm')
    }
  })

  test('wheel-loads says truly what a rider and five points of share put on the front', () => {
    const text = readFileSync('content/calculators/wheel-loads.mdx', 'utf8')
    const rider = (shown(wheelLoads, { rider: 80 }).now.output.parts as unknown as number[][])[1]!
    // "a little less of it in front than behind"
    expect(rider[1]!).toBeLessThan(rider[2]!)
    expect(rider[1]! / rider[2]!).toBeGreaterThan(0.8)
    // five points of 80 kg are 4 kg; along a fork at 25° they squeeze 18 N/mm by 4 · 9.80665 · cos 25° / 18 = 1.97 mm
    expect(text).toContain('are 4 kg there, which sink a fork of 18 N/mm by nearly 2 mm')
    const sink = (0.05 * 80 * 9.80665 * Math.cos((25 * Math.PI) / 180)) / 18
    expect(sink).toBeGreaterThan(1.9)
    expect(sink).toBeLessThan(2)
  })

  test('a support picture shows the rear held as the steps hold it', () => {
    const steps = procedures().find(({ id }) => id === 'support-the-front')!.steps
    expect(steps.find(({ id }) => id === 'steady-the-rear')!.do).toMatch(/rear on its paddock stand/)
    for (const id of ['front-hung-for-fork-work', 'front-hung-for-sag'])
      expect(captions[id]).toMatch(/rear is on its paddock stand/)
  })
})
