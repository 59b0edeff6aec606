/** Base path of the site with a slash at its end. */
export const base = import.meta.env.BASE_URL.replace(/\/?$/, '/')
