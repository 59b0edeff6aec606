/** The parts of jstat that the tests compare with; the package carries no types. */
declare module 'jstat' {
  const jstat: {
    studentt: { inv: (probability: number, degreesOfFreedom: number) => number }
    centralF: { cdf: (value: number, above: number, below: number) => number }
  }
  export default jstat
}
