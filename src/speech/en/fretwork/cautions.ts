/** Cautions at the steps where they matter. They remind; local rules and the makers’ data sheets decide. */
import type { CautionId } from '../../../fretwork/checks/cautions.ts';
import { words } from '../../language.ts';

/** What a caution is about, as it stands behind “Caution:”. */
export const CAUTION_WORDS = words('CAUTION_WORDS', {
  caution: (about: string) => `Caution: ${about}`,
  asAt: (step: number) => `as at step ${step}.`,
  ownWood: 'your own wood',
  names: {
    dust: 'dust',
    'dust-sensitising': 'dust that sensitises',
    'wire-ends': 'wire ends',
    pressing: 'pressing',
    glue: 'glue',
    solvents: 'solvents',
    strings: 'strings',
    rod: 'rod',
    'listed-wood': 'protected wood',
    heat: 'heat',
  } satisfies Readonly<Record<CautionId, string>>,
});

export const CAUTION_TEXTS = words('CAUTION_TEXTS', {
  dust: 'Saw and file with extraction and a fitted dust mask, and vacuum the slots instead of blowing them out. Hardwood dust can cause cancer of the nose; the European limit at work is 2 mg/m³ of inhalable dust.',
  'dust-sensitising': (wood: string) =>
    `Dust of ${wood} can sensitise or irritate skin, eyes and airways, sometimes after years without trouble. Cover your arms, wash before eating.`,
  'wire-ends':
    'Clipped wire flies, and its ends are sharp: eye protection, nip into a rag or a box, sweep up before anyone walks there barefoot.',
  pressing:
    'Support the neck right under the caul or the blow, the heel and the headstock free. Keep fingers out from under the press.',
  glue: (glue: string, caution: string) => `You are using ${glue}. ${caution}`,
  solvents:
    'Alcohol, acetone and naphtha burn: no flame, iron or sparks near, fresh air, rags spread out to dry outside.',
  strings: 'A string can let go: face away while it comes up to pitch the first time, and cut its ends short.',
  rod: 'Turn the rod a quarter at a time and wait. A nut that has become hard to turn is at its limit: stop there. A broken rod can be replaced, but the neck has to be opened for it.',
  heat: 'Irons and heating blankets burn skin and can scorch or light wood, finish and celluloid: never leave them alone, keep what burns away, and do not hurry them. Heat that moves the wood also softens the glue under the board and around inlays; where the neck is glued to a body, keep it off that joint. The instructions of the device and local rules decide.',
  'listed-wood': (woods: string) =>
    `Trade in ${woods} may be regulated under CITES. Check the current listing, and keep proof of where the wood came from with this sheet.`,
} satisfies Readonly<Record<CautionId, string | ((...given: string[]) => string)>>);
