/** Said where a part that comes later did not come. */
export const NOT_LOADED =
  'Part of this page did not load. Check the connection, then load the page again.'
