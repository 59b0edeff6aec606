import type { JSX } from 'preact'
import type { BikeSheet, BikeSheets } from '../../src/bikes/sheet.ts'
import type { Unit } from '../../src/units/units.ts'
import { writerFor } from '../../src/worksheet/bench.ts'
import { commaText } from '../../src/worksheet/decimalMark.ts'
import { UNIT_SETS } from '../../src/worksheet/settings.ts'
import type { Settings } from '../../src/worksheet/settings.ts'
import type { Sheet } from '../../src/worksheet/sheet.ts'

const ROWS: readonly (readonly [label: string, read: (bike: BikeSheet) => number, unit: Unit])[] = [
  ['Mass, wet, without a rider', ({ mass }) => mass, 'kg'],
  ['Share of that on the front wheel', ({ frontShare }) => frontShare, '%'],
  ['Wheelbase', ({ wheelbase }) => wheelbase, 'mm'],
  ['Height of the centre of gravity', ({ centreOfGravityHeight: height }) => height, 'mm'],
  ['Rake', ({ rake }) => rake, '°'],
  ['Axle ahead of the steering axis', ({ forkOffset }) => forkOffset, 'mm'],
  ['Radius of the front tyre', ({ frontRadius }) => frontRadius, 'mm'],
  ['Unsprung mass, front', ({ frontUnsprungMass: mass }) => mass, 'kg'],
  ['Fork springs, each leg', ({ fork }) => fork.springRate, 'N/mm'],
  ['Preload, each leg', ({ fork }) => fork.preload, 'mm'],
  ['Rider sits ahead of the rear axle', ({ rider }) => rider.x, 'mm'],
]

const nameOf = ({ name }: BikeSheet): string => name.replace(/ \(.*\)$/, '')

/** A bike is named by the last word of its name: "the roadster". */
const isNamed = (bike: BikeSheet, { questions }: Sheet): boolean => {
  const word = nameOf(bike).split(' ').at(-1)!.toLowerCase()
  return questions.some(({ text }) => text.toLowerCase().includes(word))
}

interface BikeDataProps {
  sheet: Sheet
  settings: Settings
  bikes: BikeSheets
}

/** The figures of the invented bikes that a sheet names, so that it can be worked on paper. */
export function BikeData({ sheet, settings, bikes }: BikeDataProps): JSX.Element | null {
  const named = Object.values(bikes).filter((bike) => isNamed(bike, sheet))
  if (named.length === 0) return null
  const write = writerFor(UNIT_SETS[settings.units])
  const told = (value: number, unit: Unit): string =>
    settings.comma ? commaText(write(value, unit)) : write(value, unit)
  return (
    <table class="worksheet-bikes">
      <caption>The bikes named here are invented. With the suspension extended:</caption>
      <thead>
        <tr>
          <td></td>
          {named.map((bike) => (
            <th key={bike.id} scope="col">
              {nameOf(bike)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {ROWS.map(([label, read, unit]) => (
          <tr key={label}>
            <th scope="row">{label}</th>
            {named.map((bike) => (
              <td key={bike.id}>{told(read(bike), unit)}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  )
}
