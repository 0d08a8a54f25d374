/** What `predict` refuses, in words for a terminal. */
import { PREDICT_WORDS } from '../../speech/en/workshop/predict.ts';
import type { UsageTrouble } from './arguments.ts';
import type { FileTrouble } from './read-file.ts';

export const nameOf = (path: string): string => (path === '-' ? PREDICT_WORDS.standardInput : path);

export function usageText(trouble: UsageTrouble): string {
  switch (trouble.code) {
    case 'no-file':
      return PREDICT_WORDS.noFile;
    case 'two-files':
      return PREDICT_WORDS.twoFiles(trouble.files.map(nameOf).join(', '));
    case 'unknown-option':
      return PREDICT_WORDS.unknownOption(trouble.option);
    case 'no-value':
      return PREDICT_WORDS.noValue(trouble.option);
    case 'twice':
      return PREDICT_WORDS.twice(trouble.option);
    case 'takes-no-value':
      return PREDICT_WORDS.takesNoValue(trouble.option);
    case 'both-from-input':
      return PREDICT_WORDS.bothFromInput;
  }
}

export function fileText(path: string, trouble: FileTrouble): string {
  const file = nameOf(path);
  switch (trouble.code) {
    case 'missing':
    case 'folder':
    case 'forbidden':
    case 'empty':
      return PREDICT_WORDS[trouble.code](file);
    case 'too-large':
      return PREDICT_WORDS.tooLarge(file, `${trouble.mostBytes / 1_000_000} MB`);
    case 'not-utf-8':
      return PREDICT_WORDS.notUtf8(file);
    case 'not-utf-16':
      return PREDICT_WORDS.notUtf16(file);
    case 'utf-32':
      return PREDICT_WORDS.utf32(file);
    case 'system':
      return PREDICT_WORDS.system(file, trouble.system);
  }
}

/**
 * A message as one line that a terminal only shows: what a file holds must not move its cursor or colour it, and must not
 * be so long that the message is lost in it.
 */
export function asLine(message: string, most = 2000): string {
  const cut = message.length > most ? `${message.slice(0, most).replace(/[\ud800-\udbff]$/, '')}…` : message;
  const shown = (character: string) =>
    /\p{Zs}|\n/u.test(character) ? ' ' : `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`;
  return cut.replace(/[\p{Cc}\p{Zl}\p{Zp}\u00a0]/gu, shown);
}
