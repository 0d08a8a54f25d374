/** That a band is not narrowed by what the build refers to, in a line; nothing where it is, or refers to nothing. */
import type { BiteStanding, GripStanding } from '../../mechanics/bench-log/standing.ts';
import { BITE_NOTICE_WORDS } from '../en/pages/bite-notice.ts';

/** In a line beside the numbers. */
export function shortStandingText({ code }: BiteStanding): string | undefined {
  switch (code) {
    case 'earlier':
    case 'not-accepted':
    case 'not-here':
    case 'changed':
      return BITE_NOTICE_WORDS.short[code];
    default:
      return undefined;
  }
}

export function shortGripStandingText(standing: GripStanding): string | undefined {
  if (standing.code === 'reading') return undefined;
  if (standing.code === 'in-use') return standing.isOther ? BITE_NOTICE_WORDS.gripShort['other-neck'] : undefined;
  return BITE_NOTICE_WORDS.gripShort[standing.code];
}
