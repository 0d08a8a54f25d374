/**
 * The first minute: a neck like one's own, chosen by its picture, and the three things that decide most; the verdict over the
 * picture answers. Nothing has to be closed first, and whoever turns to anything else is left alone from then on.
 */
import { useEffect, useRef, useState } from 'react';
import type { Build } from '../../../neck/build.ts';
import { kerfChange, workingKerfMm } from '../../../neck/kerf.ts';
import { METHODS } from '../../../mechanics/prediction-types.ts';
import { parameterById } from '../../../neck/parameters.ts';
import type { NumberParameter } from '../../../neck/parameter-kinds.ts';
import { PRESETS } from '../../../neck/presets.ts';
import { LabelledSelect } from '../../../kit/labelled-select.tsx';
import { PRESET_WORDS } from '../../../speech/en/neck/necks.ts';
import { WELCOME_WORDS } from '../../../speech/en/pages/welcome.ts';
import { METHOD_WORDS, PROJECT_WORDS } from '../../../speech/en/workshop/workshop.ts';
import { presetBuild } from '../../../speech/names.ts';
import type { Outcome } from '../../../state/build-slice.ts';
import { store, useBackbow } from '../../../state/store.ts';
import { FirstNumber } from './first-number.tsx';
import { NeckPicture } from './neck-picture.tsx';
import { rememberVisit } from './visit.ts';
import './welcome.css';

/** Changes by the panel itself keep it; any other neck or change takes it away. */
function useOwnChanges(leave: () => void): (act: () => Outcome) => Outcome {
  const isOwn = useRef(false);
  useEffect(
    () =>
      store.subscribe((state, before) => {
        if (state.build === before.build) return;
        rememberVisit();
        if (!isOwn.current) leave();
      }),
    [leave],
  );
  return (act) => {
    isOwn.current = true;
    try {
      return act();
    } finally {
      isOwn.current = false;
    }
  };
}

const numberParameter = (id: 'studWidthMm' | 'kerfMm') => parameterById(id) as NumberParameter;

function Necks({ choose }: { readonly choose: (preset: (typeof PRESETS)[number]) => void }) {
  const [chosen, setChosen] = useState<string>(PRESETS[0].id);
  return (
    <ul className="first-necks">
      {PRESETS.map((preset) => (
        <li key={preset.id}>
          <button
            type="button"
            aria-pressed={chosen === preset.id}
            title={PRESET_WORDS[preset.id].description}
            onClick={() => {
              setChosen(preset.id);
              choose(preset);
            }}
          >
            <NeckPicture build={preset.build} />
            <span>{PRESET_WORDS[preset.id].label}</span>
          </button>
        </li>
      ))}
    </ul>
  );
}

/** @param leave the visitor has turned to something else */
export function Welcome({ leave }: { readonly leave: () => void }) {
  const own = useOwnChanges(leave);
  const build = useBackbow((state) => state.build);
  const system = useBackbow((state) => state.unitSystem);
  const { openDialog } = store.getState();
  const change = (what: Partial<Build>, label: string) => own(() => store.getState().change(what, label));
  return (
    <section className="welcome" aria-label={WELCOME_WORDS.title}>
      <h2>{WELCOME_WORDS.neck}</h2>
      <Necks
        choose={(preset) =>
          own(() =>
            store.getState().replaceBuild(presetBuild(preset), PROJECT_WORDS.stepPreset(PRESET_WORDS[preset.id].label)),
          )
        }
      />
      <h2>{WELCOME_WORDS.three}</h2>
      <div className="first-three">
        <FirstNumber
          parameter={numberParameter('studWidthMm')}
          label={WELCOME_WORDS.wire}
          value={build.studWidthMm}
          system={system}
          change={(studWidthMm) => change({ studWidthMm }, WELCOME_WORDS.wire)}
        />
        <FirstNumber
          parameter={numberParameter('kerfMm')}
          label={WELCOME_WORDS.saw}
          value={workingKerfMm(build, build.method)}
          system={system}
          change={(kerfMm) => change(kerfChange(build, kerfMm), WELCOME_WORDS.saw)}
        />
        <LabelledSelect
          label={WELCOME_WORDS.seating}
          value={build.method}
          options={METHODS.map((value) => ({ value, label: METHOD_WORDS[value].label }))}
          choose={(method) => change({ method }, WELCOME_WORDS.seating)}
        />
      </div>
      <p className="quiet">{WELCOME_WORDS.read}</p>
      <div className="button-row">
        <button
          type="button"
          onClick={() => {
            leave();
            openDialog('lessons');
          }}
        >
          {WELCOME_WORDS.lesson}
        </button>
        <button type="button" onClick={() => openDialog('glossary')}>
          {WELCOME_WORDS.glossary}
        </button>
        <button type="button" onClick={leave}>
          {WELCOME_WORDS.close}
        </button>
      </div>
    </section>
  );
}
