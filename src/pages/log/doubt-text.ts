/** What makes the log's answer doubtful, in words. */
import type { Doubt } from '../../mechanics/bench-log/doubts.ts';
import { LOG_WORDS } from '../../speech/en/pages/log.ts';

/** @param necks that the answer comes from */
export function doubtText(doubt: Doubt, necks: number): string {
  switch (doubt.code) {
    case 'end-of-grid':
      return LOG_WORDS.doubts[doubt.side === 'soft' ? 'tooSoft' : 'tooHard'];
    case 'identical':
      return LOG_WORDS.doubts.identical(doubt.entries, necks);
    case 'unexplained':
      return LOG_WORDS.doubts.unexplained(doubt.entries);
    case 'contradicting':
      return LOG_WORDS.doubts.contradicting;
  }
}
