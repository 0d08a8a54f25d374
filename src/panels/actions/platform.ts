export function isMac(): boolean {
  return /mac|iphone|ipad/i.test(navigator.platform);
}
