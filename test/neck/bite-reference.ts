/** A reference to measurements, sound as to form. */
export const BITE_REFERENCE = {
  factor: 1.18,
  measurements: ['bcdfghjklmnpqr', 'zxwvtsrqpnmlkj'],
  hash: '0123456789abcdef0123456789abcdef',
  necks: 2,
  logSpread: 0.17,
};
