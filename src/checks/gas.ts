import { gasEnergy, gasForce, standardPressure, type Gas } from '../core/index.ts'
import { call } from './call.ts'

/** A piston of 1 m², so that travel in metres is volume in cubic metres, and a force in newtons is a pressure in pascals. */
const UNIT_PISTON = Math.sqrt(4 / Math.PI)

/** The gas of such a leg: at `pressure` when it fills `volume` (both absolute), in a fork long enough for the larger volume. */
function chamber(
  pressure: number,
  volume: number,
  newVolume: number,
): { gas: Gas; travel: number; at: (volume: number) => number } {
  const travel = Math.max(volume, newVolume)
  const gas = {
    tubeDiameter: UNIT_PISTON,
    boreDiameter: UNIT_PISTON,
    airHeight: 0,
    closed: { pressure: (pressure * volume) / travel },
  }
  return { gas, travel, at: (left) => travel - left }
}

interface Process {
  pressure: number
  volume: number
  newVolume: number
  exponent: number
  temperature?: number
}

function after({ pressure, volume, newVolume, exponent, temperature }: Process) {
  const { gas, travel, at } = chamber(pressure, volume, newVolume)
  const reached = gasForce(gas, travel, at(newVolume), {
    exponent,
    from: at(volume),
    ambientPressure: 0,
  })
  // the ideal gas law, p V/T constant
  return {
    pressure: reached,
    ...(temperature === undefined
      ? {}
      : { temperature: (temperature * reached * newVolume) / (pressure * volume) }),
  }
}

interface Compression {
  pressure: number
  newPressure: number
  temperature: number
  gasConstant: number
  exponent: number
  stages?: number
}

/** Work per kilogram of gas that flows through a compressor [J/kg]: the exponent times the work on a closed volume, in equal stages cooled between. */
function flowWork({
  pressure,
  newPressure,
  temperature,
  gasConstant,
  exponent,
  stages = 1,
}: Compression): number {
  const ratio = (newPressure / pressure) ** (1 / stages)
  const volume = (gasConstant * temperature) / pressure
  const squeezed = volume * ratio ** (-1 / exponent)
  const { gas, travel, at } = chamber(pressure, volume, squeezed)
  return (
    stages *
    exponent *
    gasEnergy(gas, travel, at(volume), at(squeezed), {
      exponent,
      from: at(volume),
      ambientPressure: 0,
    })
  )
}

export const gas = {
  gasAfter: call(['gasForce'], after),
  flowWork: call(['gasEnergy'], flowWork),
  standardPressure: call(['standardPressure'], ({ altitude }: { altitude: number }) =>
    standardPressure(altitude),
  ),
}
