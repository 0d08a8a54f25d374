/** A job to another device and back, as a file. */
import { fileName } from '../../kit/file-name.ts';
import { offerDownload, pickFile } from '../../kit/files.ts';
import { BENCH_FILE_WORDS, BENCH_WORDS } from '../../speech/en/bench/bench.ts';
import { isolated } from '../../speech/isolate.ts';
import { neckOf, type BenchJob } from '../../state/jobs/job-document.ts';
import { JOB_FILE_ENDING, readJobFile, writeJobFile } from '../../state/jobs/job-file.ts';
import { jobStore } from '../../state/jobs/job-store.ts';
import { received } from '../../state/jobs/receive-job.ts';
import type { Said } from '../log/said-line.tsx';
import { goTo } from '../papers/route.ts';

/** A job with all its steps back is a few hundred kilobytes at most. */
const MOST_BYTES = 20_000_000;

const nameOf = (job: BenchJob): string => isolated(neckOf(job).name || BENCH_WORDS.unnamed);

export function saveJob(job: BenchJob): Said {
  const name = fileName(neckOf(job).name, JOB_FILE_ENDING);
  offerDownload(name, writeJobFile(job), 'application/json');
  return { title: BENCH_FILE_WORDS.saved(name) };
}

/** Reads a job from a file into the jobs of this device. */
async function openJob(file: File): Promise<Said> {
  const refuse = (why: keyof typeof BENCH_FILE_WORDS.troubles): Said => ({
    title: BENCH_FILE_WORDS.notOpened(file.name),
    lines: [BENCH_FILE_WORDS.troubles[why]],
  });
  if (file.size > MOST_BYTES) return refuse('too-large');
  let text: string;
  try {
    text = await file.text();
  } catch {
    return refuse('unreadable');
  }
  const read = readJobFile(text);
  if (!read.ok) return refuse(read.trouble);
  const { job } = read;
  await jobStore.read();
  const here = jobStore.now().items?.find(({ id }) => id === job.id);
  const { arrival, out, into } = received(job, here);
  const open = into[0] ?? here;
  const more = { label: BENCH_WORDS.lookAt, run: () => goTo('bench', open.id) };
  const title = BENCH_FILE_WORDS.arrived[arrival](nameOf(job));
  if (into.length === 0) return { title, more };
  await jobStore.put(out, into);
  return { title, more, undo: () => jobStore.put(into, out) };
}

export function OpenJobFile({ say }: { readonly say: (said: Said) => void }) {
  async function choose(): Promise<void> {
    const file = await pickFile('.json,application/json');
    if (file) say(await openJob(file));
  }
  return (
    <section>
      <h2>{BENCH_FILE_WORDS.title}</h2>
      <p>{BENCH_FILE_WORDS.intro}</p>
      <button type="button" onClick={() => void choose()}>
        {BENCH_FILE_WORDS.open}
      </button>
    </section>
  );
}
