/** Cautions, shown at the step where they matter. They remind; local rules and the makers' data sheets decide. */
import { say } from '../../speech/language.ts';
import type { Build } from '../../neck/build.ts';
import { glueById } from '../../neck/glues.ts';
import { OWN_WOOD_ID, woodById } from '../../neck/woods.ts';
import type { Fact } from '../facts.ts';
import { glueWords, woodName } from '../../speech/names.ts';

export type CautionId =
  'dust' | 'dust-sensitising' | 'wire-ends' | 'pressing' | 'glue' | 'solvents' | 'strings' | 'rod' | 'listed-wood';

export interface Caution extends Fact {
  readonly id: CautionId;
}

const PRACTICE = { source: say`common practice, no source`, mark: 'practice' } as const;

/** Ids of the woods of a build that fretting touches or that its papers name: the board first, then the neck's. */
export function woodsOf(build: Pick<Build, 'boardWood' | 'laminates'>): string[] {
  return [...new Set([build.boardWood, ...build.laminates.map((laminate) => laminate.wood)])];
}

/** Woods of a build with a note on trade in them, by id. */
export function listedWoods(build: Pick<Build, 'boardWood' | 'laminates'>): string[] {
  return woodsOf(build).filter((id) => id !== OWN_WOOD_ID && woodById(id).trade.is !== 'free');
}

function woodLabel(id: string): string {
  return id === OWN_WOOD_ID ? say`your own wood` : woodName(id);
}

/** The cautions that this build calls for, by id. */
export function cautionsFor(build: Build): ReadonlyMap<CautionId, Caution> {
  const cautions: Caution[] = [
    {
      id: 'dust',
      text: say`Saw and file with extraction and a fitted dust mask, and vacuum the slots instead of blowing them out. Hardwood dust can cause cancer of the nose; the European limit at work is 2 mg/m³ of inhalable dust.`,
      source: say`IARC group 1; Directive 2004/37/EC as amended by (EU) 2017/2398 (from memory)`,
      mark: 'mem',
    },
  ];
  if (build.boardWood !== OWN_WOOD_ID && woodById(build.boardWood).dust.is !== 'ordinary') {
    cautions.push({
      id: 'dust-sensitising',
      text: say`Dust of ${woodLabel(build.boardWood)} can sensitise or irritate skin, eyes and airways, sometimes after years without trouble. Cover your arms, wash before eating.`,
      source: say`HSE woodworking sheet on toxic woods (from memory)`,
      mark: 'mem',
    });
  }
  cautions.push(
    {
      id: 'wire-ends',
      text: say`Clipped wire flies, and its ends are sharp: eye protection, nip into a rag or a box, sweep up before anyone walks there barefoot.`,
      ...PRACTICE,
    },
    {
      id: 'pressing',
      text: say`Support the neck right under the caul or the blow, the heel and the headstock free. Keep fingers out from under the press.`,
      ...PRACTICE,
    },
  );
  if (build.method !== 'press') {
    const glue = glueById(build.glueKind);
    cautions.push(
      { id: 'glue', text: `${glueWords(glue.id).label}: ${glueWords(glue.id).caution}`, ...PRACTICE },
      {
        id: 'solvents',
        text: say`Alcohol, acetone and naphtha burn: no flame, iron or sparks near, fresh air, rags spread out to dry outside.`,
        ...PRACTICE,
      },
    );
  }
  cautions.push({
    id: 'strings',
    text: say`A string can let go: face away while it comes up to pitch the first time, and cut its ends short.`,
    ...PRACTICE,
  });
  if (build.rodKind !== 'none') {
    cautions.push({
      id: 'rod',
      text: say`Turn the rod a quarter at a time and wait. A nut that has become hard to turn is at its limit: stop there, a broken rod means a new neck.`,
      ...PRACTICE,
    });
  }
  const listed = listedWoods(build);
  if (listed.length > 0) {
    cautions.push({
      id: 'listed-wood',
      text: say`${listed.map(woodLabel).join(', ')}: trade may be regulated under CITES. Check the current listing, and keep proof of where the wood came from with this sheet.`,
      source: say`notes of the wood table; Checklist of CITES Species`,
      mark: 'practice',
    });
  }
  return new Map(cautions.map((caution) => [caution.id, caution]));
}
