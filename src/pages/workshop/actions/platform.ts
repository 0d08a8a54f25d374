let mac: boolean | undefined;

/** Whether keys are named as on a Mac. */
export function isMac(): boolean {
  mac ??= /mac|iphone|ipad/i.test(navigator.platform);
  return mac;
}
