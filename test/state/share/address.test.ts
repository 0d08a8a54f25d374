import { expect, test } from 'vitest';
import { addressOf, routeOf } from '../../../src/state/share/address.ts';

test('an address is taken apart as it was put together', () => {
  const address = addressOf('https://example.org/neck/?x=1#old', { kind: 'customer', link: '1.a_-B' });
  expect(address).toBe('https://example.org/neck/?x=1#customer=1.a_-B');
  expect(routeOf(new URL(address).hash)).toEqual({ kind: 'customer', link: '1.a_-B' });
});

test.each(['', '#', '#controls', '#neck', '#other=1.a', 'neck=1.a'])('“%s” leads nowhere', (hash) => {
  expect(routeOf(hash)).toBeNull();
});

test('what a mail program escaped or left behind does not matter', () => {
  expect(routeOf('#neck=1%2Eab%5Fc')).toEqual({ kind: 'neck', link: '1.ab_c' });
  expect(routeOf('#neck=1.ab ')).toEqual({ kind: 'neck', link: '1.ab' });
  expect(routeOf('#neck=%E0%A4%A')).toEqual({ kind: 'neck', link: '%E0%A4%A' });
});
