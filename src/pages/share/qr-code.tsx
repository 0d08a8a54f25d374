/** A QR code as one path: black on white in any appearance, with the quiet zone that readers need. */
import { encode } from 'uqr';
import { SHARE_WORDS } from '../../speech/en/pages/share.ts';

/** More characters make modules too fine for a phone that looks at a screen. */
export const MOST_FOR_QR = 1100;
/** Modules of white around the code: ISO/IEC 18004 asks for four. */
const QUIET = 4;

/** Path of the dark modules, one unit each. */
export function qrPath(text: string): { readonly path: string; readonly size: number } {
  const { data, size } = encode(text, { ecc: 'L', border: QUIET });
  const path = data.flatMap((row, y) => row.flatMap((dark, x) => (dark ? [`M${x} ${y}h1v1h-1z`] : []))).join('');
  return { path, size };
}

export function QrCode({ text }: { readonly text: string }) {
  if (text.length > MOST_FOR_QR) return <p className="quiet">{SHARE_WORDS.qrTooLong}</p>;
  const { path, size } = qrPath(text);
  return (
    <svg
      className="qr"
      viewBox={`0 0 ${size} ${size}`}
      role="img"
      aria-label={SHARE_WORDS.qrLabel}
      shapeRendering="crispEdges"
    >
      <rect width={size} height={size} fill="#fff" />
      <path d={path} fill="#000" />
    </svg>
  );
}
