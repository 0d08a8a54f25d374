const MAC = /mac|iphone|ipad/i.test(navigator.platform);

/** Whether keys are named as on a Mac. */
export function isMac(): boolean {
  return MAC;
}
