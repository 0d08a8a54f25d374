/**
 * What a server says with every file of the page: what the page may load and run, who may show it in a frame, what it tells
 * other sites, which devices it may ask for, and how long a file is good. One list for the server of `npm start`, for the
 * page itself and for the lines that other servers take (other-hosts.mjs). Plain JavaScript without packages, since the
 * server reads it as it stands.
 *
 * Sources: W3C Content Security Policy Level 3, Referrer Policy and Permissions Policy; WHATWG HTML (cross-origin opener
 * policy) and Fetch (nosniff, cross-origin resource policy); RFC 8246 (immutable).
 */
import { createHash } from 'node:crypto';

/**
 * The style library of the controls makes an empty style element and fills it rule by rule, which the policy does not
 * look at; the empty element itself must be allowed, by the hash of nothing.
 */
const EMPTY_STYLE = `'sha256-${createHash('sha256').update('').digest('base64')}'`;

/** What the page may load and run. A worker is held to it only by the header of its own script. */
const POLICY = {
  'default-src': ["'none'"],
  'script-src': ["'self'"],
  'style-src': ["'self'", EMPTY_STYLE],
  'font-src': ["'self'"],
  // Pictures that the page has drawn itself come as data or blob addresses.
  'img-src': ["'self'", 'data:', 'blob:'],
  'connect-src': ["'self'"],
  'worker-src': ["'self'"],
  'manifest-src': ["'self'"],
  'base-uri': ["'none'"],
  'form-action': ["'none'"],
};

/** @param {Readonly<Record<string, readonly string[]>>} policy */
const policyText = (policy) =>
  Object.entries(policy)
    .map(([directive, sources]) => [directive, ...sources].join(' '))
    .join('; ');

/** The policy as the page itself can carry it. */
export const SECURITY_POLICY = policyText(POLICY);

/** Devices that the page may ask for when somebody wants it to, and those that it never needs. */
const OWN_DEVICES = ['camera', 'microphone', 'screen-wake-lock'];
const NO_DEVICES = [
  'accelerometer',
  'display-capture',
  'geolocation',
  'gyroscope',
  'hid',
  'magnetometer',
  'midi',
  'payment',
  'serial',
  'usb',
];

/** Browsers take it only from https or this machine, and log an error where it comes from elsewhere. */
export const ONLY_WHERE_SECURE = 'Cross-Origin-Opener-Policy';

/** @type {Readonly<Record<string, string>>} */
export const SECURITY_HEADERS = {
  // What only a server can say is added here: nobody may show the page in a frame.
  'Content-Security-Policy': policyText({ ...POLICY, 'frame-ancestors': ["'none'"] }),
  'Referrer-Policy': 'no-referrer',
  'Permissions-Policy': [
    ...OWN_DEVICES.map((device) => `${device}=(self)`),
    ...NO_DEVICES.map((device) => `${device}=()`),
  ].join(', '),
  'X-Content-Type-Options': 'nosniff',
  [ONLY_WHERE_SECURE]: 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
};

/** Names in this folder carry a hash of their content, so that a file in it never changes. */
export const HASHED_FOLDER = 'assets';
export const KEEP_FOR_EVER = 'public, max-age=31536000, immutable';
/** Everything else, the page and its service worker above all, is asked for again each time. */
export const ASK_AGAIN = 'no-cache';
