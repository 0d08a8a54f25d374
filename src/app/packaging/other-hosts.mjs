/** The headers of the page as lines for other servers. The README shows them, and a test holds it to these. */
import { ASK_AGAIN, HASHED_FOLDER, KEEP_FOR_EVER, SECURITY_HEADERS } from './headers.mjs';

const headers = Object.entries(SECURITY_HEADERS);

/** For nginx: the map beside the `server` block, the rest in it. */
export function nginxLines() {
  return [
    'map $uri $backbow_caching {',
    `    ~/${HASHED_FOLDER}/[^/]+$  "${KEEP_FOR_EVER}";`,
    `    default             "${ASK_AGAIN}";`,
    '}',
    '# in the server block, and again in every location in it that has an add_header of its own:',
    ...headers.map(([name, value]) => `add_header ${name} "${value}" always;`),
    'add_header Cache-Control $backbow_caching;',
  ].join('\n');
}

/** For Apache 2.4 with mod_headers: `.htaccess` in the page's folder. */
export function apacheLines() {
  return [
    ...headers.map(([name, value]) => `Header always set ${name} "${value}"`),
    `Header set Cache-Control "${ASK_AGAIN}"`,
    `<If "%{REQUEST_URI} =~ m#/${HASHED_FOLDER}/[^/]+$#">`,
    `    Header set Cache-Control "${KEEP_FOR_EVER}"`,
    '</If>',
  ].join('\n');
}

/** For static hosts that read a file of headers by path. */
export function headerFileLines() {
  return [
    '/*',
    ...headers.map(([name, value]) => `  ${name}: ${value}`),
    `/${HASHED_FOLDER}/*`,
    `  Cache-Control: ${KEEP_FOR_EVER}`,
  ].join('\n');
}
