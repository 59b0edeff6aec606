import fc from 'fast-check'

/* For mutation testing alone: a fault that a law can see shows within a few dozen draws, and thousands of mutants have to be tried. */
fc.configureGlobal({ numRuns: 25, seed: 7 })
