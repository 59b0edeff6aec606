import type { InputOf } from '../../machine/values.ts'
import type statement from './statement.ts'

export type Values = InputOf<typeof statement>
