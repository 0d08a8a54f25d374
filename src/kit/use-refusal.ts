/** Why a value was refused, for as long as it reads right: in other units or another language it would be of a page that is gone. */
import { useState } from 'react';
import { useBackbow } from '../state/store.ts';
import { useLanguage } from './use-language.ts';

export function useRefusal(): readonly [string | undefined, (text: string | undefined) => void] {
  const system = useBackbow((state) => state.unitSystem);
  const language = useLanguage();
  const [refusal, setRefusal] = useState<{
    readonly text: string;
    readonly system: typeof system;
    readonly language: typeof language;
  }>();
  const holds = refusal?.system === system && refusal.language === language;
  return [
    holds ? refusal.text : undefined,
    (text) => setRefusal(text === undefined ? undefined : { text, system, language }),
  ];
}
