/** The worker that writes and opens backups, so that the page does not stand still meanwhile. */
import { expose } from 'comlink';
import { fileWork } from './backup-file.ts';

expose(fileWork);
