/** Deviations that hold 95 % of a normal distribution (any table of it). */
export const NORMAL_95 = 1.959963984540054

/** The same of Student's distribution with four degrees of freedom (any table of it). */
export const STUDENT_95_OF_4 = 2.7764451051977987
