import { z } from 'astro/zod'

/* The one schema of a bike as the workshop writes it down: mm, kg, N/mm, N, degrees, cm³, per cent; the unit of each number is in SHEET_UNITS
   (src/bikes/inSI.ts). Browsers take the type alone, never zod: `import type`. */

const share = z.tuple([z.number(), z.number()])
const point = z.strictObject({ x: z.number(), z: z.number() })
const load = point.extend({ mass: z.number() })
const sagWindow = z.strictObject({ static: share, rider: share })

/** x runs forward from the rear axle and z up from the ground, in the pose for which rake and wheelbase are quoted. */
export const bikeSheet = z.strictObject({
  name: z.string(),
  about: z.string(),
  quotedAt: z.strictObject({ frontTravel: z.number(), rearTravel: z.number() }),
  wheelbase: z.number(),
  rake: z.number(),
  forkOffset: z.number(),
  frontTyre: z.string(),
  rearTyre: z.string(),
  frontRadius: z.number(),
  rearRadius: z.number(),
  pivot: point,
  /** wet, without rider */
  mass: z.number(),
  /** share of the bike alone on the front wheel */
  frontShare: z.number(),
  centreOfGravityHeight: z.number(),
  frontUnsprungMass: z.number(),
  rearUnsprungMass: z.number(),
  fork: z.strictObject({
    kind: z.enum(['conventional', 'upside-down']),
    damper: z.enum(['rod', 'cartridge']),
    travel: z.number(),
    /** per leg */
    springRate: z.number(),
    preload: z.number(),
    tubeDiameter: z.number(),
    boreDiameter: z.number(),
    /** oil height: collapsed, spring out */
    airHeight: z.number(),
    stackVolume: z.number(),
    friction: z.number(),
    topOut: z.strictObject({ rate: z.number(), length: z.number() }).optional(),
    /** tube in sight at full extension */
    exposedTube: z.number(),
  }),
  rear: z.strictObject({
    shocks: z.number(),
    travel: z.number(),
    springRate: z.number(),
    preload: z.number(),
    motionRatio: z.strictObject({ initial: z.number(), slope: z.number() }),
    gasForce: z.number(),
    friction: z.number(),
  }),
  rider: load,
  passenger: load,
  luggage: load,
  frontSagWindow: sagWindow,
  rearSagWindow: sagWindow,
})

/** What is written on a bike's sheet. */
export type Written = z.infer<typeof bikeSheet>

/** A bike's sheet, called by its file's name or by a bike's code. What is in SI says so, and is none. */
export interface BikeSheet extends Written {
  id: string
  units?: never
}

/** Sheets by id. */
export type BikeSheets = Readonly<Record<string, BikeSheet>>

/** A sheet from what a file of content/bikes holds; refuses what is no sheet. */
export const readSheet = (id: string, data: unknown): BikeSheet => ({
  id,
  ...bikeSheet.parse(data),
})
