/** The parts of jstat that the tests compare with; the package carries no types. */
declare module 'jstat' {
  const jstat: {
    studentt: { inv: (probability: number, degreesOfFreedom: number) => number }
    centralF: { cdf: (value: number, above: number, below: number) => number }
    binomial: { cdf: (successes: number, trials: number, chance: number) => number }
    chisquare: { cdf: (value: number, degreesOfFreedom: number) => number }
  }
  export default jstat
}
