/** A text that is longer than can be kept: it stays as it was typed or pasted, and is refused in words until it is mended. */
import { formatNumber } from '../speech/quantity.ts';
import { CONTROL_WORDS } from '../speech/en/workshop/controls.ts';

/**
 * @param label what the text is, at the head of the sentence
 * @param most characters that it may have
 * @returns undefined when it is short enough
 */
export function tooLong(label: string, text: string, most: number): string | undefined {
  return text.length <= most
    ? undefined
    : CONTROL_WORDS.tooLong(label, formatNumber(text.length, 0), formatNumber(most, 0));
}
