/** Words of sharing: links, files, and what is said of a link that cannot be opened. */
import { words } from '../../language.ts';

export const SHARE_WORDS = words('SHARE_WORDS', {
  title: 'Share',
  what: 'What',
  whats: {
    build: 'this neck',
    methods: 'this neck, seated in different ways',
    saved: 'this neck beside others that you have saved',
  },
  methods: 'Ways of seating to compare',
  atLeastTwo: 'Choose two or three to compare.',
  cannot: (label: string, why: string) => `${label} is not possible with this neck: ${why}`,
  saved: 'Saved necks to put beside this one',
  noneSaved: 'Nothing is saved in the library yet.',
  as: 'Opens as',
  ass: {
    neck: 'the workshop’s view, with every number',
    customer: 'a page for the customer, in plain words',
  },
  from: 'From: your workshop, and how to reach you',
  to: 'For',
  note: 'Your note',
  /** Names of texts whose labels say more. */
  short: { from: 'From' },
  textsFirst: 'There is a link and a file as soon as the texts above are short enough.',
  advised: 'You advise',
  noAdvice: 'nothing in particular',
  offers: 'What each choice costs, in your words (leave it empty to say nothing)',
  price: 'Price',
  time: 'Time it takes',
  link: 'Link',
  copy: 'Copy the link',
  copied: 'The link is copied.',
  copyByHand: 'This browser does not let a page copy. The link is marked: copy it with your keys or the menu.',
  length: (characters: number) => `${characters} characters`,
  longForMessages: 'Some mail and message programs cut links of this length. Send the file if the link arrives broken.',
  localOnly:
    'This page is served from your own device, so the link opens on this device only. Put the page on a web server to send links, or send the file.',
  tooLong: (length: string, most: string) =>
    `The link would be ${length} characters long, and at most ${most} can be opened again. Shorten the notes of the neck, or send the file.`,
  privacy:
    'The link holds the neck itself, after the sign #, which browsers keep to themselves. Nothing is stored on a server; whoever has the link can read it.',
  logStays:
    'The bands you see are narrowed by your bench log, which stays on this device; the link and the file only say how many necks it was and what they gave. Whoever opens them gets the same neck with the wider bands of an unmeasured bite.',
  file: 'Save as a file',
  page: 'Look at the customer’s page',
  qr: 'QR code',
  qrLabel: 'QR code of the link',
  qrTooLong: 'The link is too long for a QR code that a phone reads from a screen.',
  fileNames: { comparison: 'comparison' },
});

export const LINK_WORDS = words('LINK_WORDS', {
  notOpened: 'The link was not opened; your build is unchanged. The link is still in the address bar.',
  newer: (version: number, newest: number) =>
    `It was made by a newer release (version ${version}); this program reads up to version ${newest}. Open it with a newer release.`,
  broken:
    'It is not whole: characters are missing or changed. Copy it again from where it came, or ask for the file instead.',
  tooLong: (length: number, most: number) =>
    `It is ${length} characters long; at most ${most} are read. It is no link of this program, or something was pasted twice.`,
  refused: 'It is whole, but what it holds is no neck that can be built:',
  opened: (name: string) => `Opened “${name}” from a link. Undo brings back what was here before.`,
  stepOpen: 'Open a link',
  copy: 'Copy the link',
});

export const RECEIVED_WORDS = words('RECEIVED_WORDS', {
  title: 'Necks that came together',
  intro: (count: number) =>
    count === 0
      ? 'None of the necks could be read.'
      : `${count === 1 ? 'One neck' : `${count} necks`}. Open one to work on it; what is on the bench now can be brought back by undo.`,
  open: 'Open',
  openName: (name: string) => `Open “${name}”`,
  opened: (name: string) => `“${name}” is on the bench. Undo brings back what was there before.`,
  refused: (place: number, name: string | null) => `Not read: ${name === null ? `entry ${place}` : `“${name}”`}.`,
  note: 'Note that came with them',
  keepAll: 'Keep them all in the library',
  page: 'Show them as the customer’s page',
});
