/** Which frets go in now, and what is to be done with their slots first where that was decided on the way. */
import { slotAndTang, type Build } from '../../neck/build.ts';
import { workingKerfMm } from '../../neck/kerf.ts';
import type { UnitSystem } from '../../neck/units.ts';
import { BENCH_READING_WORDS, BENCH_WORDS } from '../../speech/en/bench/bench.ts';
import { textOf } from '../../speech/quantity-text.ts';
import { stepText } from '../../speech/steps.ts';
import { neckNow, neckOf } from '../../state/jobs/job-document.ts';
import { BoardMap } from './board-map.tsx';
import type { InJob } from './job-view.tsx';
import { unread, type Screen } from './screens.ts';
import { Cautions } from './step-screen.tsx';

/** What differs from the neck as it was handed over, for frets that are alike. */
function changesFor(frets: readonly number[], before: Build, now: Build, system: UnitSystem): string[] {
  const said = new Map<string, { readonly frets: number[]; readonly say: (list: string) => string }>();
  const note = (key: string, fret: number, say: (list: string) => string) => {
    const known = said.get(key) ?? { frets: [], say };
    known.frets.push(fret);
    said.set(key, known);
  };
  for (const fret of frets) {
    const [was, is] = [slotAndTang(before, fret), slotAndTang(now, fret)];
    const { kerfMm, tangWidthMm, studWidthMm } = is;
    const kerf = textOf('kerfMm', kerfMm, system);
    if (was.tangWidthMm !== tangWidthMm || was.studWidthMm !== studWidthMm) {
      const [tang, studs] = [textOf('tangWidthMm', tangWidthMm, system), textOf('studWidthMm', studWidthMm, system)];
      note(`wire ${tang} ${studs}`, fret, (list) => BENCH_WORDS.otherWire(list, tang, studs));
    }
    if (was.kerfMm === kerfMm) continue;
    const isGlued = kerfMm >= workingKerfMm(is, 'glue');
    note(`${isGlued} ${kerf}`, fret, (list) =>
      isGlued ? BENCH_WORDS.glueThese(list, kerf) : BENCH_WORDS.openFirst(list, kerf),
    );
  }
  return [...said.values()].map(({ frets: alike, say }) => say(alike.join(', ')));
}

export function SeatScreen({ screen, job, system }: InJob & { readonly screen: Extract<Screen, { kind: 'seat' }> }) {
  const { step, frets, before } = screen;
  const build = neckOf(job);
  const changes = changesFor(frets, build, neckNow(job), system);
  const why = unread(build);
  const isGluing = job.now.changes.some(({ rest }) => rest.code === 'glue');
  return (
    <>
      {changes.map((change) => (
        <p key={change} className="bench-change">
          {change}
        </p>
      ))}
      {changes.length > 0 && isGluing && <p className="bench-caution">{BENCH_WORDS.glueCaution}</p>}
      <p>{BENCH_WORDS.seatThese}</p>
      <p className="bench-frets">
        {frets.map((fret) => (
          <b key={fret}>{fret}</b>
        ))}
      </p>
      <BoardMap job={job} frets={frets} before={before} />
      <p>{stepText(step)}</p>
      {why !== null && <p className="quiet">{BENCH_READING_WORDS[why]}</p>}
      <Cautions job={job} step={step} />
    </>
  );
}
