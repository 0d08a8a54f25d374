/**
 * A job as a file, so that it goes from the desk to the bench and back without a network:
 *
 *   { "format": "backbow job", "version": 1, "job": { … } }
 *
 * The job stands there as a device keeps it.
 */
import { JOB_VERSION, jobOf, type BenchJob } from './job-document.ts';

const FORMAT = 'backbow job';
const VERSION = 1;
export const JOB_FILE_ENDING = 'job.backbow-job.json';

export type JobFileTrouble = 'not-a-job' | 'newer' | 'damaged';
export type ReadJobFile =
  { readonly ok: true; readonly job: BenchJob } | { readonly ok: false; readonly trouble: JobFileTrouble };

export function writeJobFile(job: BenchJob): string {
  return `${JSON.stringify({ format: FORMAT, version: VERSION, job })}\n`;
}

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const isNewer = (version: unknown, known: number): boolean => typeof version === 'number' && version > known;

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** Reads what `writeJobFile` wrote; nothing in it is corrected. */
export function readJobFile(text: string): ReadJobFile {
  const data = parsed(text);
  if (!isObject(data)) return { ok: false, trouble: text.includes(FORMAT) ? 'damaged' : 'not-a-job' };
  if (data['format'] !== FORMAT) return { ok: false, trouble: 'not-a-job' };
  const { version, job } = data;
  if (isNewer(version, VERSION) || (isObject(job) && isNewer(job['version'], JOB_VERSION)))
    return { ok: false, trouble: 'newer' };
  const read = version === VERSION ? jobOf(job) : null;
  return read ? { ok: true, job: read } : { ok: false, trouble: 'damaged' };
}
