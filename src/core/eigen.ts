/** An eigenvalue, real and imaginary part. */
export interface Complex {
  re: number
  im: number
}

type Matrix = number[][]

// Entries below this are near the end of what a number holds: a direction taken from them has lost its digits. LAPACK's dlahqr has such a limit too.
const TINY = 1e-290

const at = (a: Matrix, i: number, j: number): number => a[i]![j]!

function put(a: Matrix, i: number, j: number, value: number): void {
  a[i]![j] = value
}

// Plain loops and plain numbers from here to the sweep: a curve asks for a hundred matrices at each move of a slider, and closures and lists took most of the time.

/** Applies the reflection I − 2vvᵀ (v of length 1, on rows and columns from `start`) from both sides. */
function reflect(a: Matrix, v: readonly number[], start: number): void {
  for (let j = 0; j < a.length; j++) {
    let dot = 0
    for (let k = 0; k < v.length; k++) dot += v[k]! * at(a, start + k, j)
    for (let k = 0; k < v.length; k++) put(a, start + k, j, at(a, start + k, j) - 2 * dot * v[k]!)
  }
  for (const row of a) {
    let dot = 0
    for (let k = 0; k < v.length; k++) dot += v[k]! * row[start + k]!
    for (let k = 0; k < v.length; k++) row[start + k]! -= 2 * dot * v[k]!
  }
}

/** The unit vector whose reflection turns x into a multiple of the first axis; null if x lies on it already, or as good as. */
function householder(x: readonly number[]): number[] | null {
  if (x.every((entry, i) => i === 0 || Math.abs(entry) < TINY)) return null
  const v = [...x]
  v[0]! += Math.sign(v[0]! || 1) * Math.hypot(...x)
  const length = Math.hypot(...v)
  return v.map((entry) => entry / length)
}

function toHessenberg(a: Matrix): void {
  for (let k = 0; k < a.length - 2; k++) {
    const v = householder(a.slice(k + 1).map((row) => row[k]!))
    if (v) reflect(a, v, k + 1)
    for (let i = k + 2; i < a.length; i++) put(a, i, k, 0)
  }
}

function blockEigenvalues(a: number, b: number, c: number, d: number): [Complex, Complex] {
  const half = (a - d) / 2
  const square = half * half + b * c
  const middle = (a + d) / 2
  if (square < 0) {
    const im = Math.sqrt(-square)
    return [
      { re: middle, im },
      { re: middle, im: -im },
    ]
  }
  const step = half + Math.sign(half || 1) * Math.sqrt(square)
  return [
    { re: d + step, im: 0 },
    { re: step === 0 ? d : d - (b * c) / step, im: 0 },
  ]
}

/**
 * Turns rows and columns k, k + 1 and k + 2 by the reflection that takes (x, y, z) to a multiple of the first axis; at the end of a block, its row `high`, there
 * is no third and z is 0. Left of column k − 1 and below row k + 3 all three hold nothing but 0.
 */
function turn(h: Matrix, k: number, high: number, x: number, y: number, z: number): void {
  if (Math.abs(y) < TINY && Math.abs(z) < TINY) return
  const head = x + Math.sign(x || 1) * lengthOf(x, y, z)
  const length = lengthOf(head, y, z)
  const p = head / length
  const q = y / length
  const r = z / length
  const third = Math.min(k + 2, high)
  const a = h[k]!
  const b = h[k + 1]!
  const c = h[third]!
  for (let j = Math.max(0, k - 1); j < h.length; j++) {
    const twice = 2 * (p * a[j]! + q * b[j]! + r * c[j]!)
    a[j]! -= twice * p
    b[j]! -= twice * q
    c[j]! -= twice * r
  }
  for (let i = 0; i <= Math.min(k + 3, high); i++) {
    const row = h[i]!
    const twice = 2 * (p * row[k]! + q * row[k + 1]! + r * row[third]!)
    row[k]! -= twice * p
    row[k + 1]! -= twice * q
    row[third]! -= twice * r
  }
}

const lengthOf = (x: number, y: number, z: number): number =>
  z === 0 ? Math.hypot(x, y) : Math.hypot(x, y, z)

/** One implicit double-shift QR sweep (Francis) over rows low…high, with shifts of this mean and of this imaginary part squared. */
export function sweep(h: Matrix, low: number, high: number, mean: number, spread: number): void {
  // differences first: shifts are near the diagonal, and products would cancel
  const corner = at(h, low, low) - mean
  const below = at(h, low + 1, low)
  let x = corner * corner + spread + at(h, low, low + 1) * below
  let y = below * (corner + (at(h, low + 1, low + 1) - mean))
  let z = below * at(h, low + 2, low + 1)
  for (let k = low; k < high; k++) {
    turn(h, k, high, x, y, z)
    // The bulge moves one place down; what should be 0 behind it is.
    if (k > low) for (let i = k + 1; i <= Math.min(k + 2, high); i++) put(h, i, k - 1, 0)
    x = at(h, k + 1, k)
    y = k + 2 <= high ? at(h, k + 2, k) : 0
    z = k + 3 <= high ? at(h, k + 3, k) : 0
  }
}

/** Row where the unreduced block that ends at `high` begins; entries below the rounding of their neighbours, or of `size`, count as 0. */
function blockStart(h: Matrix, high: number, size: number): number {
  for (let k = high; k > 0; k--) {
    const neighbours = Math.abs(at(h, k, k)) + Math.abs(at(h, k - 1, k - 1))
    if (Math.abs(at(h, k, k - 1)) <= Math.max(TINY, Number.EPSILON * Math.max(neighbours, size))) {
      put(h, k, k - 1, 0)
      return k
    }
  }
  return 0
}

/**
 * Mean and squared imaginary part of the two shifts for a block that ends at `high`: the eigenvalues of its last corner; where those are real, the nearer one twice,
 * for two far apart can hold each other up. A rare matrix turns in a circle even so: every tenth try takes others.
 * Source: Anderson et al., LAPACK's dlahqr, after Day 1996.
 */
export function shifts(h: Matrix, high: number, tries: number): [number, number] {
  const [a, b, c, d] = [
    at(h, high - 1, high - 1),
    at(h, high - 1, high),
    at(h, high, high - 1),
    at(h, high, high),
  ]
  if (tries % 10 === 0) {
    const size = Math.abs(c) + Math.abs(at(h, high - 1, high - 2))
    return [d + 0.75 * size, 0.4375 * size * size]
  }
  // Of two real ones the second is the nearer: the first is found by the larger step from d.
  const [, { re, im }] = blockEigenvalues(a, b, c, d)
  return [re, im * im]
}

/**
 * Eigenvalues of a small real square matrix, largest real part first (a pair: positive imaginary part first). Householder reduction
 * to Hessenberg form, then QR with double shifts: orthogonal steps alone, so that each result belongs to a matrix within rounding of the
 * given one. Source: Golub and Van Loan, Matrix Computations, ch. 7.
 */
export function eigenvalues(matrix: readonly (readonly number[])[]): Complex[] {
  const h = matrix.map((row) => [...row])
  toHessenberg(h)
  const found: Complex[] = []
  // Neighbours of 0 would ask for the impossible: after a while the rounding of the whole matrix will do, and some more each time.
  const whole = (): number => Math.hypot(...matrix.flat())
  let high = h.length - 1
  let tries = 0
  while (high >= 0) {
    const low = blockStart(h, high, tries > 30 ? whole() * 2 ** ((tries - 30) / 30) : 0)
    if (low === high) found.push({ re: at(h, high, high), im: 0 })
    else if (low === high - 1)
      found.push(
        ...blockEigenvalues(at(h, low, low), at(h, low, high), at(h, high, low), at(h, high, high)),
      )
    else {
      tries += 1
      if (tries > 300) throw new Error('the QR iteration did not settle')
      sweep(h, low, high, ...shifts(h, high, tries))
      continue
    }
    high = low - 1
    tries = 0
  }
  return found.sort((a, b) => b.re - a.re || b.im - a.im)
}
