/** Die Sicherung: eine Datei für alles auf dem Gerät. */
import type * as english from '../../en/pages/backup.ts';

const records = (count: number): string => (count === 1 ? 'ein Eintrag' : `${count} Einträge`);

export const BACKUP_WORDS: typeof english.BACKUP_WORDS = {
  titleWith: (when) => `Sicherung – zuletzt: ${when}`,
  titleNever: 'Sicherung – noch keine gemacht',
  due: 'Hier liegt viel, was in keiner Sicherung steht. Geht das Gerät verloren oder wird der Browser geleert, ist es weg.',
  intro:
    'Eine Datei nimmt alles auf, was auf diesem Gerät liegt: die Sammlung, was auf der Werkbank liegt oder lag, das Messprotokoll und Ihre Einstellungen. Heben Sie sie woanders auf, und spielen Sie sie hier oder auf einem anderen Gerät wieder ein.',
  promised: {
    'not-asked': 'Noch liegt hier nichts; der Browser wurde daher noch nicht gebeten, es auf Dauer zu behalten.',
    granted: 'Der Browser hat zugesagt, alles zu behalten, bis Sie es selbst löschen.',
    denied:
      'Der Browser hat nicht zugesagt, es zu behalten: Wird der Platz auf dem Gerät knapp, kann er es löschen. Machen Sie Sicherungen.',
    unavailable:
      'Hier lässt sich der Browser nicht bitten, es auf Dauer zu behalten (ein alter Browser, ein privates Fenster oder eine Adresse ohne https): Wird der Platz auf dem Gerät knapp, kann er es löschen. Machen Sie Sicherungen.',
  },
  keptNowhere:
    'Der Browser behält für diese Seite nichts: ein privates Fenster, oder der Speicher ist gesperrt. Machen Sie eine Sicherung, bevor Sie es schließen: Die Datei nimmt auf, was auf der Werkbank liegt und was Sie ins Messprotokoll eingetragen haben.',
  askAgain: 'Den Browser noch einmal bitten',
  make: 'Alles sichern',
  making: 'Die Sicherung wird gemacht.',
  restoreFile: 'Sicherung einspielen …',
  reading: 'Die Sicherung wird gelesen.',
  restoring: 'Sie wird auf das Gerät geschrieben.',
  failed:
    'Das ging nicht: Es ist vielleicht mehr, als dieser Browser auf einmal halten kann. Was hier liegt, ist wie zuvor.',
  fileName: 'sicherung',
  made: (parts) => `Die Sicherung liegt als Datei vor. Sie enthält ${parts}.`,
  notMade: 'Die Sicherung wurde nicht gemacht.',
  tooLarge: (size, most) => `Sie hat ${size}; eine Sicherung darf höchstens ${most} haben.`,
  makeSmaller:
    'Speichern Sie die Sammlung mit „Alle als Datei sichern“, löschen Sie darin endgültig, was Sie nicht mehr brauchen, und machen Sie die Sicherung noch einmal.',
  madeEmpty: 'Auf diesem Gerät liegt nichts, was zu sichern wäre.',
  counts: {
    necks: (count) => (count === 1 ? 'einen Hals der Sammlung' : `${count} Hälse der Sammlung`),
    bench: (count) => (count === 1 ? 'einen Hals von der Werkbank' : `${count} Hälse von der Werkbank`),
    matches: (count) => (count === 1 ? 'einen gerade schnarrenden Hals' : `${count} gerade schnarrende Hälse`),
    lessons: (count) => (count === 1 ? 'einen Eintrag zu den Lektionen' : `${count} Einträge zu den Lektionen`),
    strips: (count) => (count === 1 ? 'einen Probestreifen' : `${count} Probestreifen`),
    jobs: (count) => (count === 1 ? 'eine Arbeit an der Werkbank' : `${count} Arbeiten an der Werkbank`),
    stock: (count) => (count === 1 ? 'ein Sägeblatt oder einen Bunddraht' : `${count} Sägeblätter und Bunddrähte`),
    log: (count) => (count === 1 ? 'einen Eintrag im Messprotokoll' : `${count} Einträge im Messprotokoll`),
    accepted: (count) => (count === 1 ? 'einen übernommenen Greiffaktor' : `${count} übernommene Greiffaktoren`),
    settings: (count) => (count === 1 ? 'eine Einstellung' : `${count} Einstellungen`),
  },
  parts: {
    necks: 'Sammlung',
    bench: 'Werkbank, und was darauf geblieben ist',
    log: 'Messprotokoll',
    matches: 'Gerade schnarrende Hälse',
    lessons: 'Was in den Lektionen durchgegangen und geschätzt wurde',
    strips: 'Probestreifen',
    jobs: 'Arbeiten an der Werkbank',
    stock: 'Sägeblätter und Bunddraht',
    accepted: 'Übernommene Greiffaktoren',
    settings: 'Einstellungen',
  },
  leftOut: (part, count) =>
    `${part}: ${records(count)}, die diese Fassung nicht lesen kann, ${count === 1 ? 'fehlt' : 'fehlen'} in der Datei.`,
  notSaved: (part, why) => `${part}: nicht in der Datei. ${why}`,
  foundTitle: (file, when) => `„${file}“: eine Sicherung, gemacht: ${when}`,
  foundIntro: 'Das würde sich auf diesem Gerät ändern. Was hier liegt, wird weder weggenommen noch überschrieben.',
  nothingNew: 'Alles davon ist schon da. Es gibt nichts einzuspielen.',
  emptyFile: 'Diese Sicherung enthält nichts.',
  fresh: (count) => `${count} ${count === 1 ? 'kommt' : 'kommen'} dazu`,
  known: (count) => `${count} schon da`,
  beside: (count) => `${count} anders als hier, ${count === 1 ? 'kommt' : 'kommen'} daneben`,
  stays: (count) => `${count} anders als hier; was hier ist, bleibt`,
  back: (count) => `${count} hier gelöscht, ${count === 1 ? 'kommt' : 'kommen'} zurück`,
  noPlace: (count) =>
    `${count} ${count === 1 ? 'bleibt' : 'bleiben'} in der Datei: Mehr davon hebt dieses Gerät nicht auf`,
  cannot: (why) => `lässt sich nicht einspielen. ${why}`,
  restore: 'Einspielen',
  leave: 'Lassen',
  restored: 'Die Sicherung ist eingespielt. Was auf einer Werkbank lag, steht unter „Auf der Werkbank geblieben“.',
  restoredPartly: 'Die Sicherung ließ sich nicht ganz einspielen. Was hier lag, ist wie zuvor.',
  restoredPart: (part, count) => `${part}: ${count} eingespielt.`,
  restoredNone: (part) => `${part}: nichts Neues.`,
  failedPart: (part, why) => `${part}: nicht eingespielt. ${why}`,
  again: 'Ist das behoben, spielen Sie die Datei noch einmal ein: Was dann schon da ist, kommt nicht doppelt.',
  undo: 'Rückgängig',
  undone: 'Was eingespielt wurde, ist wieder heraus. Was Sie seither geändert haben, bleibt.',
  undoneNot: (parts) => `Nicht wieder herausgenommen, weil das Gerät es nicht zuließ: ${parts}.`,
  refused: (file) => `„${file}“ wurde nicht eingespielt; geändert wurde nichts.`,
  fileTroubles: {
    'not-json': 'Es ist keine Sicherung, oder sie ist abgeschnitten: Sie lässt sich nicht bis zum Ende lesen.',
    'not-a-backup':
      'Es ist keine Sicherung dieses Programms. Hälse in einer eigenen Datei kommen mit „Aus einer Datei hereinholen …“ herein.',
    newer: 'Sie stammt aus einer neueren Fassung. Spielen Sie sie mit einer neueren Fassung dieses Programms ein.',
    damaged:
      'Sie ist beschädigt: Was darin steht, ist nicht, was hineingeschrieben wurde. Nehmen Sie eine andere Kopie.',
    'too-deep': 'Es ist keine Sicherung dieses Programms: Sie ist zu tief verschachtelt.',
    unreadable: 'Die Datei ließ sich nicht lesen.',
  },
  faults: {
    'wrong-kind': (part, place) =>
      place === 0
        ? `${part}: Dieser Teil ist nicht, was er sein soll.`
        : `${part}, Eintrag ${place}: Er ist nicht, was er sein soll.`,
    'too-many': (part) => `${part}: Es sind mehr, als dieses Programm nimmt.`,
    'same-id': (part, place) => `${part}, Eintrag ${place}: Ein früherer Eintrag hat dieselbe Kennung.`,
  },
  troubles: {
    full: 'Auf diesem Gerät ist kein Platz mehr.',
    refused: 'Der Browser behält für diese Seite nichts: ein privates Fenster, oder der Speicher ist gesperrt.',
    silent:
      'Der Speicher des Browsers antwortet nicht. Schließen Sie andere Fenster dieses Programms und laden Sie die Seite neu.',
    newer: 'Was hier liegt, hat eine neuere Fassung geschrieben; es bleibt, wie es ist.',
  },
};
