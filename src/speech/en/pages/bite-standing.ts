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
});
