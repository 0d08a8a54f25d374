/** Words of the backup: one file for everything on the device. */
import { words } from '../../language.ts';

const entries = (count: number, one: string, many: string): string =>
  `${count === 1 ? 'one' : count} ${count === 1 ? one : many}`;

export const BACKUP_WORDS = words('BACKUP_WORDS', {
  titleWith: (when: string) => `Backup – last made ${when}`,
  titleNever: 'Backup – none made yet',
  due: 'There is much here that no backup has. If this device is lost or its browser is cleared, it is gone.',
  intro:
    'One file takes everything that is kept on this device: the library, what lies or lay on the bench, the bench log and your settings. Keep it somewhere else, and restore it here or on another device.',
  promised: {
    'not-asked': 'Nothing has been kept here yet, so the browser has not been asked to keep it for good.',
    granted: 'The browser has promised to keep it all until you clear it yourself.',
    denied:
      'The browser has not promised to keep it: it may clear it when the device runs short of room. Make backups.',
    unavailable:
      'The browser cannot be asked here to keep it for good (an old browser, a private window, or an address without https): it may clear it when the device runs short of room. Make backups.',
  },
  keptNowhere:
    'The browser keeps nothing for this page: a private window, or storage is blocked. Back up before you close it: the file takes what is on the bench and what you have entered in the log.',
  askAgain: 'Ask the browser again',
  make: 'Back up everything',
  making: 'The backup is being made.',
  restoreFile: 'Restore from a backup …',
  reading: 'The backup is being read.',
  restoring: 'It is being written to this device.',
  failed: 'That did not work: there may be too much for this browser to hold at once. What is here is as it was.',
  fileName: 'backup',
  made: (parts: string) => `The backup is saved as a file. It holds ${parts}.`,
  notMade: 'The backup was not made.',
  tooLarge: (size: string, most: string) => `It has ${size}; a backup may have ${most} at most.`,
  makeSmaller:
    'Save the library as a file with “Save all as a file”, delete for good what you no longer need in it, and make the backup again.',
  madeEmpty: 'There is nothing on this device to back up.',
  counts: {
    necks: (count: number) => entries(count, 'neck of the library', 'necks of the library'),
    bench: (count: number) => entries(count, 'neck of the bench', 'necks of the bench'),
    matches: (count: number) => entries(count, 'neck that just buzzed', 'necks that just buzzed'),
    lessons: (count: number) => entries(count, 'note on the lessons', 'notes on the lessons'),
    strips: (count: number) => entries(count, 'try strip', 'try strips'),
    jobs: (count: number) => entries(count, 'job of the bench', 'jobs of the bench'),
    stock: (count: number) => entries(count, 'blade or wire', 'blades and wires'),
    log: (count: number) => entries(count, 'entry of the bench log', 'entries of the bench log'),
    accepted: (count: number) => entries(count, 'bite factor taken over', 'bite factors taken over'),
    settings: (count: number) => entries(count, 'setting', 'settings'),
  },
  parts: {
    necks: 'Library',
    bench: 'Bench, and what was left on it',
    log: 'Bench log',
    matches: 'Necks that just buzzed',
    lessons: 'What was gone through and guessed in the lessons',
    strips: 'Try strips',
    jobs: 'Jobs at the bench',
    stock: 'Blades and wires',
    accepted: 'Bite factors taken over from the log',
    settings: 'Settings',
  },
  leftOut: (part: string, count: number) =>
    `${part}: ${count === 1 ? 'one record' : `${count} records`} that this release cannot read ${count === 1 ? 'is' : 'are'} not in the file.`,
  notSaved: (part: string, why: string) => `${part} is not in the file. ${why}`,
  foundTitle: (file: string, when: string) => `“${file}”: a backup, made ${when}`,
  foundIntro: 'This would change on this device. Nothing that is here is taken away or written over.',
  nothingNew: 'All of it is here already. There is nothing to restore.',
  emptyFile: 'This backup holds nothing.',
  fresh: (count: number) => `${count} to add`,
  known: (count: number) => `${count} here already`,
  beside: (count: number) =>
    `${count === 1 ? '1 differs' : `${count} differ`} from what is here and will be put beside it`,
  stays: (count: number) => `${count === 1 ? '1 differs' : `${count} differ`} from what is here, which stays`,
  back: (count: number) => `${count} deleted here, to come back`,
  noPlace: (count: number) => `${count} left in the file: as many as are kept of these are here`,
  cannot: (why: string) => `cannot be restored. ${why}`,
  restore: 'Restore',
  leave: 'Leave it',
  restored: 'The backup is restored. What lay on a bench is under “Left on the bench”.',
  restoredPartly: 'Not all of the backup could be restored. What was here is as it was.',
  restoredPart: (part: string, count: number) => `${part}: ${count} restored.`,
  restoredNone: (part: string) => `${part}: nothing new.`,
  failedPart: (part: string, why: string) => `${part}: not restored. ${why}`,
  again: 'Once that is mended, restore the file again: what is here by then is not added twice.',
  undo: 'Undo',
  undone: 'What was restored is taken out again. What you have changed since stays.',
  undoneNot: (parts: string) => `Not taken out again, because the device did not let it: ${parts}.`,
  refused: (file: string) => `“${file}” was not restored; nothing has changed.`,
  fileTroubles: {
    'not-json': 'It is no backup, or it is cut short: it cannot be read to its end.',
    'not-a-backup':
      'It is no backup of this program. Necks in a file of their own come in with “Bring in from a file …”.',
    newer: 'It was made by a newer release. Restore it with a newer release of this program.',
    damaged: 'It is damaged: what it holds is not what was written into it. Take another copy of it.',
    'too-deep': 'It is no backup of this program: it is nested too deep.',
    unreadable: 'The file could not be read.',
  },
  faults: {
    'wrong-kind': (part: string, place: number) =>
      place === 0
        ? `${part}: it is not what this part should be.`
        : `${part}, record ${place}: it is not what it should be.`,
    'too-many': (part: string) => `${part}: it holds more than this program takes.`,
    'same-id': (part: string, place: number) => `${part}, record ${place}: an earlier record has the same id.`,
  },
  troubles: {
    full: 'There is no room left on this device.',
    refused: 'The browser keeps nothing for this page: a private window, or storage is blocked.',
    silent: 'The browser’s storage does not answer. Close other windows of this program and load the page again.',
    newer: 'What is here was written by a newer release, and is left alone.',
  },
});
