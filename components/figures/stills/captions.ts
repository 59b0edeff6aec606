/** What each picture shows, for the line under it. */
export const captions: Readonly<Record<string, string>> = {}
