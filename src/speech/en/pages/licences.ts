/** Words of the list of licences. */
import { words } from '../../language.ts';

export const LICENCE_WORDS = words('LICENCE_WORDS', {
  title: 'Licences',
  intro: (count: number) =>
    `Backbow is made with ${count} packages and typefaces by others. They are under these licences; open one to read its text.`,
  loading: 'The list is being fetched.',
  missing: 'The list is not here. It is written when the page is built, and comes with the built page.',
  noText: 'This package ships no text of its licence.',
  by: (author: string) => `by ${author}`,
});

/** The part of the help that says which program this is. */
export const PROGRAM_WORDS = words('PROGRAM_WORDS', {
  title: 'This program',
  version: (version: string) => `Backbow ${version}.`,
  open: 'Licences …',
});
