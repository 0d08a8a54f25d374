/**
 * What the built page may load and run: its own files, nothing from anywhere else, no code made from text, no styles
 * written into the page's text. It stands in the page itself, because the page must be safe on any server.
 * Source: W3C Content Security Policy Level 3.
 */
import { createHash } from 'node:crypto';
import type { Plugin } from 'vite';

/**
 * The style library of the controls makes an empty style element and fills it rule by rule, which the policy does not
 * look at; the empty element itself must be allowed, by the hash of nothing.
 */
const EMPTY_STYLE = `'sha256-${createHash('sha256').update('').digest('base64')}'`;

const POLICY: Readonly<Record<string, readonly string[]>> = {
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

export const SECURITY_POLICY = Object.entries(POLICY)
  .map(([directive, sources]) => [directive, ...sources].join(' '))
  .join('; ');

/** Puts the policy into the built page, before anything that it governs. */
export function securityPolicy(): Plugin {
  return {
    name: 'backbow-security-policy',
    apply: 'build',
    transformIndexHtml: {
      order: 'post',
      handler: (html) =>
        html.replace(
          /(<meta charset="utf-8"\s*\/?>)/,
          `$1\n    <meta http-equiv="Content-Security-Policy" content="${SECURITY_POLICY}" />`,
        ),
    },
  };
}
