import { answererOf } from '../../machine/away.ts'
import { calculatorOf } from '../../machine/calculator.ts'
import work from './solve.ts'
import { inParts } from './search.ts'
import statement from './statement.ts'

/** Computes a state of this calculator, in a worker or where there is none. */
export default answererOf(calculatorOf(statement, work), inParts)
