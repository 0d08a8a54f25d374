/** Words of the workshop's stock. */
import { words } from '../../language.ts';

export const STOCK_WORDS = words('STOCK_WORDS', {
  title: 'Blades and wire in the workshop',
  intro: 'Advice picks among what is here. Where no blade is entered, it names a kerf and leaves the blade to you.',
  blades: 'Blades',
  wires: 'Wire',
  noBlades: 'No blade entered.',
  noWires: 'No wire entered.',
  name: 'Name',
  kerfMm: 'Kerf, measured in a slot',
  spreadMm: 'Spread from slot to slot, ±',
  tangWidthMm: 'Tang',
  studWidthMm: 'Over the studs',
  studAreaMm2: 'Area of one stud, if known',
  studPitchMm: 'Stud to stud, if known',
  blade: (number: number) => `Blade ${number}`,
  wire: (number: number) => `Wire ${number}`,
  addBlade: 'Add a blade',
  addWire: 'Add a wire',
  remove: 'Remove',
  removeName: (name: string) => `Remove ${name}`,
  added: (name: string) => `${name} is added.`,
  changed: (name: string) => `${name} is changed.`,
  removed: (name: string) => `${name} is removed.`,
  studsOverTang: (tang: string) => `The studs must be wider than the tang (${tang}).`,
  full: (most: number) => `There is room for ${most} blades and wires.`,
  unreadable: (count: number) =>
    count === 1
      ? 'One entry has a form that this release cannot read. It stays where it is.'
      : `${count} entries have a form that this release cannot read. They stay where they are.`,
  troubles: {
    full: 'This device is out of space: what you change here is gone when the page is closed.',
    refused: 'This browser keeps nothing for this page: what you change here is gone when the page is closed.',
    silent: 'The browser’s storage does not answer: what you change here may be gone when the page is closed.',
    newer:
      'The stock on this device was written by a newer release and stays as it is. What you change here is gone when the page is closed.',
  },
});
