/* What a build holds, as the service worker carries it. Addresses are below the site's base. */

/** The files of one edition. */
export interface OfflineFiles {
  /** a mark that changes with any byte of the site */
  edition: string
  /** what all of it weighs on the way [bytes, gzip] */
  wire: number
  /** and on the device [bytes] */
  stored: number
  /** files whose names change with what they hold */
  named: readonly string[]
  /** all other files: the address, SHA-256 of what is there (base64), and which of `sets` goes with it, or -1 */
  addressed: readonly (readonly [address: string, sha256: string, set: number])[]
  /** places in `named`, of what a page needs to work */
  sets: readonly (readonly number[])[]
  /** addresses that are kept before any other: what is shown where a page is not there */
  first: readonly string[]
}

/** Files of a build, and which of them go with which. */
export class Listed {
  readonly files: OfflineFiles
  readonly #places: ReadonlyMap<string, number>

  constructor(files: OfflineFiles) {
    this.files = files
    this.#places = new Map(files.addressed.map(([address], place) => [address, place]))
  }

  /** Every address. */
  all(): string[] {
    return [...this.files.addressed.map(([address]) => address), ...this.files.named]
  }

  /** Whether there is a page or file at an address that keeps its name from edition to edition. */
  has(address: string): boolean {
    return this.#places.has(address)
  }

  /** What has to be at an address for it to be this edition's (subresource integrity); undefined where the name says it. */
  integrityOf(address: string): string | undefined {
    const place = this.#places.get(address)
    return place === undefined ? undefined : `sha256-${this.files.addressed[place]![1]}`
  }

  /** Pages with all that they need to work; addresses of no page are left out. */
  withNeeds(addresses: Iterable<string>): string[] {
    const all = new Set<string>()
    for (const address of addresses) {
      const place = this.#places.get(address)
      if (place === undefined) continue
      all.add(address)
      for (const need of this.files.sets[this.files.addressed[place]![2]] ?? [])
        all.add(this.files.named[need]!)
    }
    return [...all]
  }
}
