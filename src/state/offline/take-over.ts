/** What the page says to a waiting service worker when the person wants the new version. */
export const TAKE_OVER = 'take over';
