/** The log as a CSV file, out and in. A worker reads it. */
import { transfer } from 'comlink';
import { useEffect, useState } from 'react';
import type { UnitSystem } from '../../neck/units.ts';
import { BYTE_ORDER_MARK } from '../../neck/csv.ts';
import type { BroughtIn } from '../../mechanics/bench-log/compare.ts';
import { writeLog } from '../../mechanics/bench-log/csv.ts';
import type { LogEntry } from '../../mechanics/bench-log/entry.ts';
import { MOST_LOG_BYTES } from '../../mechanics/bench-log/read-csv.ts';
import { offerDownload, pickFile } from '../../kit/files.ts';
import { LOG_WORDS } from '../../speech/en/pages/log.ts';
import { useAnswer, type Asked } from '../../state/answers/use-answer.ts';

export function saveLog(entries: readonly LogEntry[], system: UnitSystem): void {
  offerDownload(LOG_WORDS.fileName, BYTE_ORDER_MARK + writeLog(entries, system), 'text/csv;charset=utf-8');
}

interface Coming {
  readonly file: File;
  readonly count: number;
}

export interface Bringing {
  /** How far the reading is. */
  readonly asked: Asked<BroughtIn>;
  /** Asks for a file. */
  readonly pick: () => void;
}

/**
 * Brings in a file beside the entries that are there.
 * @param take what is done with it when it has been read
 */
export function useBringing(
  entries: readonly LogEntry[],
  take: (brought: BroughtIn, fileName: string) => void,
): Bringing {
  const [coming, setComing] = useState<Coming | null>(null);
  const [count, setCount] = useState(0);
  const key = coming === null ? null : String(coming.count);
  const asked = useAnswer<BroughtIn>(key, async (api, told) => {
    const { file } = coming!;
    if (file.size > MOST_LOG_BYTES) {
      const problem = { row: null, code: 'file-too-large', bytes: file.size, mostBytes: MOST_LOG_BYTES } as const;
      return { ok: false, problems: [problem], count: 1 };
    }
    const bytes = new Uint8Array(await file.arrayBuffer());
    return api.bringIn(transfer(bytes, [bytes.buffer]), entries, told);
  });
  const { value } = asked;
  const isDone = coming !== null && value !== null && asked.status === 'done' && asked.key === key;
  useEffect(() => {
    if (!isDone) return;
    take(value, coming.file.name);
    setComing(null);
    // oxlint-disable-next-line react-hooks/exhaustive-deps -- once for each file that has been read
  }, [isDone]);
  return {
    asked,
    pick: () =>
      void pickFile('.csv,.txt,text/csv').then((file) => {
        if (!file) return;
        setComing({ file, count });
        setCount(count + 1);
      }),
  };
}
