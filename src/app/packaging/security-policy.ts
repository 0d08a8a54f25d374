/**
 * Puts the policy (headers.mjs) into the built page, before anything that it governs: the page must be safe on a server
 * that sends no headers too.
 */
import type { Plugin } from 'vite';
import { SECURITY_POLICY } from './headers.mjs';

export function securityPolicy(): Plugin {
  return {
    name: 'backbow-security-policy',
    apply: 'build',
    transformIndexHtml: {
      order: 'post',
      handler: (html) =>
        html.replace(
          /(<meta charset="utf-8"\s*\/?>)/,
          `$1\n    <meta http-equiv="Content-Security-Policy" content="${SECURITY_POLICY}" />\n    <meta name="referrer" content="no-referrer" />`,
        ),
    },
  };
}
