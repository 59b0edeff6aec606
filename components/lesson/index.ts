import { prose } from '../prose/index.ts'
import Blank from './Blank.astro'
import Danger from './Danger.astro'
import Expected from './Expected.astro'
import Grid from './Grid.astro'
import In from './In.astro'
import Lines from './Lines.astro'
import Quantity from './Quantity.astro'
import Sheet from './Sheet.astro'

/** What a lesson or a handout may use besides prose. */
export const lessonProse = { ...prose, Blank, Danger, Expected, Grid, In, Lines, Quantity, Sheet }
