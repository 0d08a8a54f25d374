/** Hearing a tapped blank: what to do, the microphone or a file, what was heard, and the frequency for the field. */
import { useMemo, useState } from 'react';
import type { Build } from '../../neck/build.ts';
import { blankId } from '../../neck/blanks.ts';
import { parameterById, type BlankPart } from '../../neck/parameters.ts';
import { expectedTone, missingForExpected, NODE_SHARE, type Expected } from '../../mechanics/hearing/expected.ts';
import type { Heard, Tone } from '../../mechanics/hearing/hear.ts';
import { Dialog } from '../../kit/dialog/dialog.tsx';
import { pickFile } from '../../kit/files.ts';
import { HEARING_WORDS } from '../../speech/en/pages/hearing.ts';
import { expectedText, hertz, levelText, refusalOfHearing, spreadOfTone } from '../../speech/measured/hearing.ts';
import { formatQuantity } from '../../speech/quantity.ts';
import type { Ear, Hearing } from '../../state/hearing/ear.ts';
import { useHearing } from '../../state/hearing/use-hearing.ts';
import { useBackbow } from '../../state/store.ts';
import { SpectrumPicture } from './spectrum-picture.tsx';
import './hearing.css';

/** More would be a table. */
const MOST_TONES = 6;
/** Before this nobody has had the time to tap. */
const PATIENCE_S = 6;

interface HearDialogProps {
  readonly part: BlankPart;
  readonly build: Build;
  /** Takes the frequency. */
  readonly take: (frequencyHz: number) => void;
  readonly close: () => void;
}

function HowTo({ part, build }: Pick<HearDialogProps, 'part' | 'build'>) {
  const system = useBackbow((state) => state.unitSystem);
  const length = build[blankId(part, 'LengthMm')];
  const distance = length === null ? '' : formatQuantity(NODE_SHARE * length, 'mm', 0, system);
  return (
    <>
      <ol className="hearing-steps">
        <li>{HEARING_WORDS.hang(distance)}</li>
        <li>{HEARING_WORDS.place}</li>
        <li>{HEARING_WORDS.tap}</li>
      </ol>
      {missingForExpected(build, part).length > 0 && <p>{HEARING_WORDS.sizesMissing}</p>}
    </>
  );
}

interface MeansProps {
  readonly hearing: Hearing;
  readonly ear: Ear;
  readonly expected: Expected | undefined;
}

function Means({ hearing, ear, expected }: MeansProps) {
  const { phase, heard, trouble } = hearing;
  const isOpen = phase === 'opening' || phase === 'listening';
  const canListen = trouble !== 'insecure' && trouble !== 'none';
  const openFile = async () => {
    const file = await pickFile('audio/*,.wav');
    if (file) await ear.open(file, expected);
  };
  return (
    <div className="button-row">
      {canListen &&
        (isOpen ? (
          <button type="button" onClick={ear.stop}>
            {HEARING_WORDS.stop}
          </button>
        ) : (
          <button type="button" className="hearing-listen" onClick={() => void ear.start(expected)}>
            {heard ? HEARING_WORDS.again : HEARING_WORDS.listen}
          </button>
        ))}
      <button type="button" disabled={isOpen} onClick={() => void openFile()}>
        {HEARING_WORDS.openFile}
      </button>
    </div>
  );
}

/** Loudness while listening, on a scale of dB as ears have it. */
function Meter({ hearing: { level, heard } }: { readonly hearing: Hearing }) {
  return (
    <div className="hearing-meter">
      <meter
        aria-label={HEARING_WORDS.level}
        aria-valuetext={levelText(level)}
        min={-60}
        max={0}
        high={-1}
        optimum={-20}
        value={Math.max(-60, 20 * Math.log10(Math.max(level, 1e-4)))}
      />
      <span>{HEARING_WORDS.tapsHeard(heard?.taps ?? 0)}</span>
    </div>
  );
}

/** What is said of what was heard; nothing while it is too early to complain. */
function saidOf({ phase, seconds, heard, trouble }: Hearing): string {
  if (trouble) return HEARING_WORDS.troubles[trouble];
  if (phase === 'opening') return HEARING_WORDS.opening;
  if (phase === 'reading') return HEARING_WORDS.reading;
  if (!heard?.refusal) return '';
  const isEarly = phase === 'listening' && heard.taps === 0 && seconds < PATIENCE_S;
  return isEarly ? '' : refusalOfHearing(heard.refusal);
}

const isSame = (tone: Tone, frequencyHz: number) => Math.abs(tone.frequencyHz - frequencyHz) < 0.05;

interface ResultProps extends Pick<HearDialogProps, 'part' | 'take'> {
  readonly heard: Heard;
  readonly expected: Expected | undefined;
}

function Result({ heard, part, expected, take }: ResultProps) {
  const [byHandHz, setByHand] = useState<number>();
  const { overview, tone, tones } = heard;
  if (!overview) return null;
  const chosenHz = byHandHz ?? tone?.frequencyHz;
  const isFirst = tone !== undefined && chosenHz !== undefined && isSame(tone, chosenHz);
  const chosen = tones.find((one) => chosenHz !== undefined && isSame(one, chosenHz));
  const parameter = parameterById(blankId(part, 'FrequencyHz'));
  const digits = parameter.kind === 'number' ? parameter.digits : 1;
  return (
    <>
      <SpectrumPicture
        overview={overview}
        expected={expected}
        tonesHz={tones.map(({ frequencyHz }) => frequencyHz)}
        chosenHz={chosenHz}
        choose={setByHand}
      />
      {expected && <p className="quiet">{expectedText(expected)}</p>}
      {tones.length > 1 && (
        <fieldset className="button-row">
          <legend>{HEARING_WORDS.tones}</legend>
          {tones.slice(0, MOST_TONES).map((one) => (
            <button
              key={one.frequencyHz}
              type="button"
              aria-pressed={one === chosen}
              onClick={() => setByHand(one.frequencyHz)}
            >
              {hertz(one.frequencyHz)}
            </button>
          ))}
        </fieldset>
      )}
      {chosenHz !== undefined && (
        <div className="hearing-result">
          <p>
            <strong>{isFirst ? HEARING_WORDS.found(hertz(chosenHz)) : HEARING_WORDS.byHand(hertz(chosenHz))}</strong>
            <br />
            {chosen && spreadOfTone(chosen)} {!isFirst && HEARING_WORDS.byHandSpread}
          </p>
          <button
            type="button"
            className="hearing-use"
            onClick={() => take(Number(chosenHz.toFixed(Math.max(1, digits))))}
          >
            {HEARING_WORDS.take(hertz(chosenHz))}
          </button>
        </div>
      )}
    </>
  );
}

export function HearDialog(props: HearDialogProps) {
  const { part, build, take, close } = props;
  const expected = useMemo(() => expectedTone(build, part), [build, part]);
  const [hearing, ear] = useHearing();
  const said = saidOf(hearing);
  return (
    <Dialog title={HEARING_WORDS.title[part]} onClose={close} className="hearing">
      <HowTo part={part} build={build} />
      <div>
        <Means hearing={hearing} ear={ear} expected={expected} />
        <p className="quiet">{HEARING_WORDS.kept}</p>
      </div>
      {hearing.phase === 'listening' && <Meter hearing={hearing} />}
      <output className="hearing-said">{said}</output>
      {hearing.heard && <Result part={part} take={take} expected={expected} heard={hearing.heard} />}
    </Dialog>
  );
}
