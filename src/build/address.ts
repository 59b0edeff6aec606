/* Where the site will be found, as whoever builds it says: SITE_URL and BASE_PATH. */

type Environment = Readonly<Record<string, string | undefined>>

/** The site's base path, from "/" to "/": "/" or "/suspension/". */
export function basePath({ BASE_PATH }: Environment): string {
  const parts = (BASE_PATH ?? '').split('/').filter((part) => part !== '')
  return ['', ...parts, ''].join('/')
}

/** A name or number by which a machine calls itself, so that no other machine gets there (RFC 6761 and RFC 5735; from memory). */
const isOwnMachine = (host: string): boolean =>
  /(^|\.)localhost$|^127\.|^0\.0\.0\.0$|^\[::1?\]$/.test(host)

/**
 * The address of the site's front page for anybody's browser, with a slash at its end, or null where SITE_URL is not set.
 * Without it the site prints no QR code, no code to embed and no address on paper, since they would lead nowhere.
 */
export function publicAddress(environment: Environment): string | null {
  const given = environment['SITE_URL']?.trim() ?? ''
  if (given === '') return null
  const url = URL.canParse(given) ? new URL(given) : null
  if (!url || !/^https?:$/.test(url.protocol))
    throw new Error(`SITE_URL is “${given}”; give an address such as https://example.org`)
  if (url.pathname !== '/' || url.search !== '' || url.hash !== '')
    throw new Error(
      `SITE_URL is “${given}”; it ends after the host, and the path goes into BASE_PATH`,
    )
  if (isOwnMachine(url.hostname))
    throw new Error(
      `SITE_URL is “${given}”, which only this machine can reach; give the public address, or leave it out to build without codes`,
    )
  return new URL(basePath(environment), url).href
}

/** What the build says of it, once. */
export const addressNotice = (address: string | null): string =>
  address === null
    ? 'address: SITE_URL is not set, so pages carry no QR codes and no code to embed'
    : `address: codes lead to ${address}`
