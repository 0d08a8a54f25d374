/** The note on the model beside the library, loaded when somebody opens what it is shown in. */
import { useEffect, useState } from 'react';

/** @returns undefined while it is fetched, null when it could not be. @param round another one fetches it again */
export function useModelNote(round = 0): string | null | undefined {
  const [note, setNote] = useState<string | null>();
  useEffect(() => {
    let gone = false;
    import('../../../mechanics/MODEL.md?raw').then(
      ({ default: text }) => !gone && setNote(text),
      () => !gone && setNote(null),
    );
    return () => {
      gone = true;
    };
  }, [round]);
  return note;
}
