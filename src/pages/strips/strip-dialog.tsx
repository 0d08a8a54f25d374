/** Try strips: planned before they are sawn, kept on this device, read one by one, and what they say of the neck in hand. */
import { useState } from 'react';
import { Dialog } from '../../kit/dialog/dialog.tsx';
import { offerDownload, pickFile } from '../../kit/files.ts';
import { LabelledSelect } from '../../kit/labelled-select.tsx';
import { readStrips, writeStrips } from '../../mechanics/try-strip/document-file.ts';
import type { TryStrip } from '../../mechanics/try-strip/document.ts';
import { STRIP_WORDS } from '../../speech/en/pages/strips.ts';
import { stripName, stripProblemText } from '../../speech/measured/strips.ts';
import { stripStore } from '../../state/strips/strip-store.ts';
import { useSpokenFor } from '../../state/bench-log/use-grip.ts';
import { useStrips } from '../../state/strips/use-strips.ts';
import { store, useBackbow } from '../../state/store.ts';
import { SaidLine, type Said } from '../log/said-line.tsx';
import { NeckEffect } from './neck-effect.tsx';
import { StripDetails } from './strip-details.tsx';
import { StripPlan } from './strip-plan.tsx';
import '../answers/wanted/wanted.css';
import './strips.css';

const FRESH = 'new';

/** Changes of the strips, each said and taken back. */
function useChanges(choose: (id: string) => void) {
  const [said, say] = useState<Said | null>(null);
  const system = useBackbow((state) => state.unitSystem);
  async function change(out: readonly TryStrip[], into: readonly TryStrip[], title: string): Promise<void> {
    await stripStore.put(out, into);
    say({
      title,
      undo: async () => {
        await stripStore.put(into, out);
        choose(out[0]?.id ?? FRESH);
      },
    });
  }
  async function bringIn(): Promise<void> {
    const file = await pickFile('.json,application/json');
    if (!file) return;
    const read = readStrips(await file.text());
    if (!read.ok) {
      const why = stripProblemText(read.problems[0], system);
      say({ title: STRIP_WORDS.notBroughtIn(file.name, why) });
      return;
    }
    const here = new Set(stripStore.now().items?.map(({ id }) => id));
    const fresh = read.strips.filter(({ id }) => !here.has(id));
    await change([], fresh, STRIP_WORDS.broughtIn(fresh.length, read.strips.length - fresh.length));
    if (fresh[0]) choose(fresh[0].id);
  }
  return { said, say, change, bringIn };
}

interface CountingProps {
  readonly strips: readonly TryStrip[];
  readonly counting: ReadonlySet<string>;
  readonly set: (counting: ReadonlySet<string>) => void;
}

/** Which strips speak for the neck in hand is the maker's word. */
function Counting({ strips, counting, set }: CountingProps) {
  const read = strips.filter(({ readings }) => readings.length > 0);
  if (read.length === 0) return null;
  const toggled = (id: string) =>
    new Set(counting.has(id) ? [...counting].filter((one) => one !== id) : [...counting, id]);
  return (
    <fieldset className="strip-counting">
      <legend>{STRIP_WORDS.countsFor}</legend>
      {read.map((strip) => (
        <label key={strip.id}>
          <input type="checkbox" checked={counting.has(strip.id)} onChange={() => set(toggled(strip.id))} />{' '}
          {stripName(strip)}
        </label>
      ))}
    </fieldset>
  );
}

export function StripDialog() {
  const { items: strips, unreadable, trouble } = useStrips();
  const build = useBackbow((state) => state.build);
  const [chosen, setChosen] = useState(FRESH);
  const spoken = useSpokenFor();
  const [chosenStrips, setCounting] = useState<ReadonlySet<string> | null>(null);
  /** Before anybody says otherwise: those that the neck refers to. */
  const counting = chosenStrips ?? new Set(spoken.strips.map(({ strip: { id } }) => id));
  const { said, say, change, bringIn } = useChanges(setChosen);
  const strip = strips?.find(({ id }) => id === chosen);
  /** Its board by the name that it was given when it was cut. */
  const isOwnBoard = ({ offcut }: TryStrip) => offcut.cutFrom !== '' && offcut.cutFrom === build.name;
  const evidence = (strips ?? [])
    .filter(({ id, readings }) => counting.has(id) && readings.length > 0)
    .map((one) => ({ strip: one, ownBoard: isOwnBoard(one) }));

  return (
    <Dialog title={STRIP_WORDS.title} onClose={store.getState().closeDialog} className="strips">
      <p className="quiet">{STRIP_WORDS.intro}</p>
      {trouble !== null && (
        <p className="refusal" role="alert">
          {STRIP_WORDS.troubles[trouble]}
        </p>
      )}
      {strips !== null && strips.length > 0 && (
        <LabelledSelect
          label={STRIP_WORDS.mine}
          value={strip ? chosen : FRESH}
          options={[
            { value: FRESH, label: STRIP_WORDS.fresh },
            ...strips.map((one) => ({ value: one.id, label: stripName(one) })),
          ]}
          choose={setChosen}
        />
      )}
      <SaidLine said={said} say={say} />
      {strips === null && <p className="quiet">{STRIP_WORDS.reading}</p>}
      {unreadable > 0 && <p className="quiet">{STRIP_WORDS.unreadable(unreadable)}</p>}
      {strip ? (
        <StripDetails
          key={strip.id}
          build={build}
          strip={strip}
          ownBoard={isOwnBoard(strip)}
          change={(changed) => {
            // Somebody who reads a strip while this neck is on the bench means this neck.
            setCounting(new Set([...counting, changed.id]));
            void change([strip], [changed], STRIP_WORDS.changed(stripName(strip)));
          }}
          remove={() => void change([strip], [], STRIP_WORDS.deleted(stripName(strip)))}
        />
      ) : (
        strips !== null && (
          <StripPlan
            build={build}
            keep={(kept) => void change([], [kept], STRIP_WORDS.kept(stripName(kept))).then(() => setChosen(kept.id))}
          />
        )
      )}
      <Counting strips={strips ?? []} counting={counting} set={setCounting} />
      <NeckEffect build={build} strips={evidence} />
      <div className="button-row">
        <button type="button" onClick={() => void bringIn()}>
          {STRIP_WORDS.bringIn}
        </button>
        <button
          type="button"
          disabled={(strips ?? []).length === 0}
          onClick={() => offerDownload(`${STRIP_WORDS.fileName}.json`, writeStrips(strips ?? []), 'application/json')}
        >
          {STRIP_WORDS.save}
        </button>
      </div>
    </Dialog>
  );
}
