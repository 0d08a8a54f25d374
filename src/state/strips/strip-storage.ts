/** Where try strips lie: one record in the browser's own database. */
import { deviceRecord, type RecordStorage } from '../device/database.ts';

export const deviceStripStorage = (): RecordStorage => deviceRecord('backbow-try-strips', 'strips');
