import Ask from './Ask.astro'
import Bench from './Bench.astro'
import Calculator from './Calculator.astro'
import Caution from './Caution.astro'
import Derivation from './Derivation.astro'
import Figure from './Figure.astro'
import Link from './Link.astro'
import Near from './Near.astro'
import Open from './Open.astro'
import Option from './Option.astro'
import Predict from './Predict.astro'
import Recall from './Recall.astro'
import SelfCheck from './SelfCheck.astro'
import Source from './Source.astro'
import Story from './Story.astro'
import Symbols from './Symbols.astro'
import Term from './Term.astro'
import Value from './Value.astro'
import Why from './Why.astro'
import Words from './Words.astro'
import Worked from './Worked.astro'
import Wrong from './Wrong.astro'
import YourTurn from './YourTurn.astro'

/** What MDX may use without importing it. */
export const prose = {
  a: Link,
  Ask,
  Bench,
  Calculator,
  Caution,
  Derivation,
  Figure,
  Near,
  Open,
  Option,
  Predict,
  Recall,
  SelfCheck,
  Source,
  Story,
  Symbols,
  Term,
  Value,
  Why,
  Words,
  Worked,
  Wrong,
  YourTurn,
}
