/** Why a value was refused, for as long as it reads right: in other units the sentence would be of a page that is gone. */
import { useState } from 'react';
import { useBackbow } from '../../../state/store.ts';

export function useRefusal(): readonly [string | undefined, (text: string | undefined) => void] {
  const system = useBackbow((state) => state.unitSystem);
  const [refusal, setRefusal] = useState<{ readonly text: string | undefined; readonly system: typeof system }>();
  return [
    refusal?.system === system ? refusal.text : undefined,
    (text) => setRefusal(text === undefined ? undefined : { text, system }),
  ];
}
