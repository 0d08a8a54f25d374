/** A small picture of the neck on the bench, as a data address that the library can keep. */
import { pictureNow } from '../papers/picture-source.ts';

const SIZE = { widthPx: 400, heightPx: 225 } as const;

/** @returns null where no picture can be drawn */
export async function benchPicture(): Promise<string | null> {
  try {
    const blob = await pictureNow()?.exportPng(SIZE);
    return blob ? await dataAddress(blob) : null;
  } catch {
    // Without WebGL, or before the first picture: the neck is kept all the same.
    return null;
  }
}

function dataAddress(blob: Blob): Promise<string> {
  return new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.addEventListener('load', () => resolve(reader.result as string));
    reader.addEventListener('error', () => reject(reader.error ?? new Error('the picture cannot be read')));
    reader.readAsDataURL(blob);
  });
}
