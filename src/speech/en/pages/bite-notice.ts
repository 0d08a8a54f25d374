/** That the band is not narrowed by what the build refers to: a line beside the large numbers. */
import { words } from '../../language.ts';

export const BITE_NOTICE_WORDS = words('BITE_NOTICE_WORDS', {
  short: {
    earlier:
      'The bite was taken from the log by an earlier release; the wide band is shown until you use the log again.',
    'not-accepted': 'The measurements behind this bite are in the log, and not accepted yet; the wide band is shown.',
    'not-here': 'The measurements behind this bite are not on this device; the wide band is shown.',
    changed: 'The measurement behind this band has changed; the wide band is shown.',
  },
  gripShort: {
    'other-grip': 'The grip was changed by hand since it was measured; the wide range is shown.',
    'not-accepted': 'The measurements behind this grip are here, and not accepted yet; the wide range is shown.',
    'not-here': 'The measurements behind this grip are not on this device; the wide range is shown.',
    changed: 'A strip or reading behind this range was changed or deleted; the wide range is shown.',
    'other-neck': 'The neck was changed since it was read; its own readings narrow nothing now.',
  },
});
