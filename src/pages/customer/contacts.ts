/** Mail addresses and telephone numbers in what the workshop wrote, so that they can be tapped. */

export interface TextPart {
  readonly text: string;
  /** Null for plain text. */
  readonly href: string | null;
}

const MAIL = /[\w.+-]+@[\w-]+(?:\.[\w-]+)+/;
/** Digits with what people put between them. */
const PHONE = /(?:\+|\(\+?)?\d[\d\s()/.\-–]{5,}\d/;
/** Fewer digits are a house number or a postal code, more are no telephone number (ITU-T E.164). */
const DIGITS = { least: 7, most: 15 } as const;
const POSTAL_OR_DATE = /^(?:\d{5}-\d{4}|\d{1,2}\.\d{1,2}\.\d{4}|\d{4}-\d\d-\d\d)$/;

const BOTH = new RegExp(`(${MAIL.source})|(${PHONE.source})`, 'g');

export function digitsOf(phone: string): string {
  return `${phone.includes('+') ? '+' : ''}${phone.replace(/\(0\)/g, '').replace(/\D/g, '')}`;
}

function isPhone(text: string): boolean {
  const count = text.replace(/\D/g, '').length;
  return count >= DIGITS.least && count <= DIGITS.most && !POSTAL_OR_DATE.test(text);
}

/** The text in parts, in their order; put together they are the text. */
export function partsOf(text: string): TextPart[] {
  const parts: TextPart[] = [];
  let end = 0;
  for (const match of text.matchAll(BOTH)) {
    const [found, mail, phone] = match;
    if (phone !== undefined && !isPhone(phone)) continue;
    if (match.index > end) parts.push({ text: text.slice(end, match.index), href: null });
    parts.push({ text: found, href: mail === undefined ? `tel:${digitsOf(found)}` : `mailto:${found}` });
    end = match.index + found.length;
  }
  if (end < text.length) parts.push({ text: text.slice(end), href: null });
  return parts;
}

/** The first address and the first number; null where there is none. */
export function contactsOf(text: string): { readonly mail: string | null; readonly phone: string | null } {
  const parts = partsOf(text);
  const first = (scheme: string) =>
    parts.find(({ href }) => href?.startsWith(scheme))?.href?.slice(scheme.length) ?? null;
  return { mail: first('mailto:'), phone: first('tel:') };
}
