/** The markup that places a calculator on another site. */
export const embedMarkup = (address: string, title: string): string =>
  `<iframe src="${address}" title="${title}" width="100%" height="900"></iframe>`
