/** What the bite of a build rests on. */
import { words } from '../../language.ts';

/** What the bite of a build rests on, where its band does not show it. */
export const BITE_STANDING_WORDS = words('BITE_STANDING_WORDS', {
  summary: (necks: number, factor: string, low: string, high: string) =>
    `${necks === 1 ? 'one measured neck' : `${necks} measured necks`}: bite factor ${factor}, 90 % sure: ${low} to ${high}`,
  earlier: (factor: string) =>
    `An earlier release took the bite factor ${factor} from the log and did not note from which entries. The wide band of an unmeasured bite is shown until you use the log again.`,
  otherFactor: (factor: string, measured: string) =>
    `The bite factor was changed to ${factor} by hand; the log gave ${measured}. The wide band of an unmeasured bite is shown.`,
  notAccepted: (summary: string) =>
    `This build refers to measurements that are in the log here (${summary}). They narrow nothing until you accept them.`,
  notHere: (summary: string) =>
    `This build refers to measurements that are not on this device (${summary}). The wide band of an unmeasured bite is shown. If the log is yours, bring in its CSV file.`,
  edited:
    'The measurement behind this band has changed: an entry says something else than when its bite was taken over, or the studs of this neck are taken for others. The wide band is shown until you use the log again.',
  deleted: (count: number) =>
    `The measurement behind this band has changed: ${count === 1 ? 'one entry is' : `${count} entries are`} no longer in the log. The wide band is shown until you use the log again.`,
  accept: 'Accept them here',
  givesOther: (here: string, there: string) =>
    `These measurements give ${here}; the build says ${there}. They were not accepted.`,
  short: {
    earlier:
      'The bite was taken from the log by an earlier release; the wide band is shown until you use the log again.',
    'not-accepted': 'The measurements behind this bite are in the log, and not accepted yet; the wide band is shown.',
    'not-here': 'The measurements behind this bite are not on this device; the wide band is shown.',
    changed: 'The measurement behind this band has changed; the wide band is shown.',
  },
});

/** What the grip of a build rests on, where try strips or readings on the neck itself speak. */
export const GRIP_STANDING_WORDS = words('GRIP_STANDING_WORDS', {
  summary: (measured: number, factor: string, low: string, high: string) =>
    `${measured === 1 ? 'one measurement' : `${measured} measurements`}: bite factor ${factor}, 90 % sure: ${low} to ${high}`,
  use: 'Use this for the neck',
  step: (factor: string) => `Measured grip, bite factor ${factor}`,
  inUse: (factor: string) =>
    `This neck uses it: bite factor ${factor}, and the narrower ranges that go with it, on every page and paper.`,
  refused: 'This is not used for the neck: correct the reading that nothing explains, or leave it out.',
  accept: 'Accept them here',
  beside: (measured: number) =>
    measured === 1
      ? 'One other measurement that this neck uses already is heard with them.'
      : `${measured} other measurements that this neck uses already are heard with them.`,
  otherGrip: (summary: string) =>
    `Bite or shape of the studs were changed by hand since they were taken from measurements (${summary}). The wide range of an unmeasured grip is shown.`,
  notAccepted: (summary: string) =>
    `This neck refers to strips or readings that are on this device (${summary}). They narrow nothing until you accept them.`,
  notHere: (summary: string) =>
    `This neck refers to strips or readings that are not on this device (${summary}). The wide range of an unmeasured grip is shown. If they are yours, bring in their files.`,
  changed: (gone: number, edited: number) =>
    `The measurements behind this neck’s grip have changed:${gone > 0 ? ` ${gone === 1 ? 'one is' : `${gone} are`} gone` : ''}${gone > 0 && edited > 0 ? ',' : ''}${edited > 0 ? ` ${edited === 1 ? 'one says' : `${edited} say`} something else than then` : ''}. The wide range is shown until you use them again.`,
  otherNeck:
    'This neck was changed since it was read: its own readings narrow nothing now. Strips and other necks still do.',
  short: {
    'other-grip': 'The grip was changed by hand since it was measured; the wide range is shown.',
    'not-accepted': 'The measurements behind this grip are here, and not accepted yet; the wide range is shown.',
    'not-here': 'The measurements behind this grip are not on this device; the wide range is shown.',
    changed: 'A strip or reading behind this range was changed or deleted; the wide range is shown.',
    'other-neck': 'The neck was changed since it was read; its own readings narrow nothing now.',
  },
});
