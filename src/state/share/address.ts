/**
 * The part of the address after "#": it stays in the browser and never reaches a server.
 *
 *   #neck=<link>       opens the build, or the comparison, in the workshop's view
 *   #customer=<link>   opens the customer's page
 */
export type Route = { readonly kind: 'neck' | 'customer'; readonly link: string };

export function routeOf(hash: string): Route | null {
  const [, kind, link] = /^#(neck|customer)=(.*)$/s.exec(hash) ?? [];
  if (kind === undefined || link === undefined) return null;
  return { kind: kind as Route['kind'], link: decoded(link.trim()) };
}

/** Mail programs may escape characters of an address. */
function decoded(link: string): string {
  try {
    return decodeURIComponent(link);
  } catch {
    return link;
  }
}

/** The whole address. @param page the page's address, with or without a fragment */
export function addressOf(page: string, { kind, link }: Route): string {
  return `${page.replace(/#.*$/s, '')}#${kind}=${link}`;
}
