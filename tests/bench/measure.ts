/** Median and 10 % to 90 % of the time of one call [s], over rounds after warm-up; each round repeats until a millisecond has passed. */
export function measure(
  call: () => unknown,
  rounds = 40,
): { median: number; low: number; high: number } {
  const times: number[] = []
  let repeats = 1
  for (let round = -10; round < rounds; round++) {
    const start = process.hrtime.bigint()
    for (let i = 0; i < repeats; i++) call()
    const seconds = Number(process.hrtime.bigint() - start) / 1e9
    if (round >= 0) times.push(seconds / repeats)
    else if (seconds < 1e-3) repeats *= 2
  }
  times.sort((a, b) => a - b)
  const at = (share: number): number => times[Math.round(share * (times.length - 1))]!
  return { median: at(0.5), low: at(0.1), high: at(0.9) }
}

const micro = (seconds: number): string => (seconds * 1e6).toFixed(seconds < 1e-4 ? 2 : 0)

export function report(
  name: string,
  { median, low, high }: { median: number; low: number; high: number },
): void {
  console.log(
    `${name}: median ${micro(median)} µs, 10 % to 90 % ${micro(low)} to ${micro(high)} µs`,
  )
}
