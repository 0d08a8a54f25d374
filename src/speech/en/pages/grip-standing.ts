/** What the grip of a build rests on, where try strips or readings on the neck itself speak; loaded with their dialogs. */
import { words } from '../../language.ts';

export const GRIP_STANDING_WORDS = words('GRIP_STANDING_WORDS', {
  summary: (measured: number, factor: string, low: string, high: string) =>
    `${measured === 1 ? 'one measurement' : `${measured} measurements`}: bite factor ${factor}, 90 % sure: ${low} to ${high}`,
  use: 'Use this for the neck',
  step: (factor: string) => `Measured grip, bite factor ${factor}`,
  inUse: (factor: string) =>
    `This neck uses the measured grip: bite factor ${factor}, and the narrower ranges that go with it, on every page and paper.`,
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
});
