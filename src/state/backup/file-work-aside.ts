/**
 * Writes and opens backups in a worker: 50 MB take seconds. It is started for one file and ended after it. Where no worker
 * runs the page does it itself: somebody whose browser is in trouble needs a backup most.
 */
import { releaseProxy, wrap, type Remote } from 'comlink';
import { fileWork, type FileWork } from './backup-file.ts';

type Question<Value> = (work: FileWork | Remote<FileWork>) => Promise<Value>;

/** @throws what the browser throws that has no workers, and Error when it breaks off */
function inWorker<Value>(question: Question<Value>): Promise<Value> {
  const worker = new Worker(new URL('./backup.worker.ts', import.meta.url), { type: 'module', name: 'backup' });
  const work = wrap<FileWork>(worker);
  return new Promise<Value>((resolve, reject) => {
    const broken = () => reject(new Error('the worker broke off'));
    worker.addEventListener('error', broken);
    worker.addEventListener('messageerror', broken);
    question(work).then(resolve, reject);
  }).finally(() => {
    work[releaseProxy]();
    worker.terminate();
  });
}

async function aside<Value>(question: Question<Value>): Promise<Value> {
  try {
    return await inWorker(question);
  } catch {
    return question(fileWork);
  }
}

export const fileWorkAside: FileWork = {
  write: (values, now) => aside((work) => work.write(values, now)),
  open: (file) => aside((work) => work.open(file)),
};
