/** Teilen: Links, Dateien, und was von einem Link gesagt wird, der sich nicht öffnen lässt. */
import type * as english from '../../en/pages/share.ts';

export const SHARE_WORDS: typeof english.SHARE_WORDS = {
  title: 'Teilen',
  what: 'Was',
  whats: {
    build: 'diesen Hals',
    methods: 'diesen Hals, die Bünde auf verschiedene Art eingesetzt',
    saved: 'diesen Hals neben anderen, die Sie gesichert haben',
  },
  methods: 'Arten des Sitzes zum Vergleichen',
  atLeastTwo: 'Wählen Sie zwei oder drei zum Vergleichen.',
  cannot: (label, why) => `„${label}“ geht bei diesem Hals nicht: ${why}`,
  saved: 'Gesicherte Hälse, neben diesen zu legen',
  noneSaved: 'In der Sammlung liegt noch nichts.',
  as: 'Öffnet sich als',
  ass: {
    neck: 'Ansicht der Werkstatt, mit allen Zahlen',
    customer: 'Seite für den Kunden, in einfachen Worten',
  },
  from: 'Von: Ihre Werkstatt, und wie man Sie erreicht',
  to: 'Für',
  note: 'Ihre Nachricht',
  short: { from: 'Von' },
  textsFirst: 'Link und Datei gibt es, sobald die Texte oben kurz genug sind.',
  advised: 'Ihre Empfehlung',
  noAdvice: 'keine bestimmte',
  offers: 'Was jede Möglichkeit kostet, in Ihren Worten (leer: nichts davon wird gesagt)',
  price: 'Preis',
  time: 'Dauer',
  link: 'Link',
  copy: 'Link kopieren',
  copied: 'Der Link ist kopiert.',
  copyByHand:
    'Dieser Browser lässt keine Seite kopieren. Der Link ist markiert: Kopieren Sie ihn mit den Tasten oder über das Menü.',
  length: (characters) => `${characters} Zeichen`,
  longForMessages:
    'Manche Mail- und Nachrichtenprogramme schneiden so lange Links ab. Kommt der Link unvollständig an, schicken Sie die Datei.',
  localOnly:
    'Diese Seite kommt von Ihrem eigenen Gerät, darum öffnet sich der Link nur hier. Legen Sie die Seite auf einen Webserver, um Links zu verschicken, oder schicken Sie die Datei.',
  tooLong: (length, most) =>
    `Der Link hätte ${length} Zeichen, und öffnen lassen sich höchstens ${most}. Kürzen Sie die Notizen des Halses, oder schicken Sie die Datei.`,
  privacy:
    'Der Link enthält den Hals selbst, hinter dem Zeichen #, und diesen Teil behalten Browser für sich. Auf keinem Server wird etwas abgelegt; wer den Link hat, kann ihn lesen.',
  logStays:
    'Die Spannen, die Sie sehen, sind durch Ihr Messprotokoll schmaler, und das bleibt auf diesem Gerät; Link und Datei sagen nur, wie viele Hälse es waren und was sie ergaben. Wer den Link oder die Datei öffnet, bekommt denselben Hals mit den breiteren Spannen, die ohne Messung gelten.',
  file: 'Als Datei sichern',
  page: 'Die Kundenseite ansehen',
  qr: 'QR-Code',
  qrLabel: 'QR-Code des Links',
  qrTooLong: 'Der Link ist zu lang für einen QR-Code, den ein Telefon vom Bildschirm abliest.',
  fileNames: { comparison: 'vergleich' },
};

export const LINK_WORDS: typeof english.LINK_WORDS = {
  notOpened: 'Der Link wurde nicht geöffnet; Ihr Entwurf ist unverändert. Der Link steht noch in der Adresszeile.',
  newer: (version, newest) =>
    `Er stammt aus einer neueren Fassung (Version ${version}); dieses Programm liest bis Version ${newest}. Öffnen Sie ihn mit einer neueren Fassung.`,
  broken:
    'Er ist nicht vollständig: Zeichen fehlen oder sind verändert. Kopieren Sie ihn noch einmal von dort, wo er herkam, oder bitten Sie um die Datei.',
  tooLong: (length, most) =>
    `Er hat ${length} Zeichen; gelesen werden höchstens ${most}. Er gehört nicht zu diesem Programm, oder etwas wurde zweimal eingefügt.`,
  refused: 'Er ist vollständig, aber was er enthält, ist kein Hals, der sich bauen ließe:',
  opened: (name) => `„${name}“ ist aus einem Link geöffnet. Rückgängig bringt zurück, was vorher hier war.`,
  stepOpen: 'Link öffnen',
  copy: 'Link kopieren',
};

export const RECEIVED_WORDS: typeof english.RECEIVED_WORDS = {
  title: 'Hälse, die zusammen gekommen sind',
  intro: (count) =>
    count === 0
      ? 'Keiner der Hälse ließ sich lesen.'
      : `${count === 1 ? 'Ein Hals. Öffnen Sie ihn' : `${count} Hälse. Öffnen Sie einen`}, um daran zu arbeiten; was jetzt auf der Werkbank liegt, bringt Rückgängig zurück.`,
  open: 'Öffnen',
  openName: (name) => `„${name}“ öffnen`,
  opened: (name) => `„${name}“ liegt auf der Werkbank. Rückgängig bringt zurück, was vorher da war.`,
  refused: (place, name) => `Nicht gelesen: ${name === null ? `Eintrag ${place}` : `„${name}“`}.`,
  note: 'Nachricht, die mitgekommen ist',
  keepAll: 'Alle in der Sammlung behalten',
  page: 'Als Seite für den Kunden zeigen',
};
