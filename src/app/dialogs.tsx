/** The dialogs of the page, each loaded when it is first opened. */
import { lazy, Suspense } from 'react';
import type { DialogId } from '../state/dialog-slice.ts';
import { useBackbow } from '../state/store.ts';

const DIALOGS: Partial<Record<DialogId, ReturnType<typeof lazy>>> = {
  licences: lazy(async () => ({
    default: (await import('../pages/about/licences/licences-dialog.tsx')).LicencesDialog,
  })),
  compare: lazy(async () => ({ default: (await import('../pages/compare/compare-dialog.tsx')).CompareDialog })),
  share: lazy(async () => ({ default: (await import('../pages/share/share-dialog.tsx')).ShareDialog })),
  received: lazy(async () => ({ default: (await import('../pages/share/received-dialog.tsx')).ReceivedDialog })),
  'bench-log': lazy(async () => ({
    default: (await import('../pages/log/bench-log-dialog.tsx')).BenchLogDialog,
  })),
  'try-strip': lazy(async () => ({
    default: (await import('../pages/strips/strip-dialog.tsx')).StripDialog,
  })),
  refret: lazy(async () => ({ default: (await import('../pages/answers/refret/refret-dialog.tsx')).RefretDialog })),
  reseat: lazy(async () => ({ default: (await import('../pages/answers/reseat/reseat-dialog.tsx')).ReseatDialog })),
  origin: lazy(async () => ({ default: (await import('../pages/about/origin/origin-dialog.tsx')).OriginDialog })),
  proof: lazy(async () => ({ default: (await import('../pages/about/proof/proof-dialog.tsx')).ProofDialog })),
  wanted: lazy(async () => ({ default: (await import('../pages/answers/wanted/wanted-dialog.tsx')).WantedDialog })),
  library: lazy(async () => ({ default: (await import('../pages/library/library-dialog.tsx')).LibraryDialog })),
  glossary: lazy(async () => ({
    default: (await import('../pages/about/glossary/glossary-dialog.tsx')).GlossaryDialog,
  })),
  lessons: lazy(async () => ({ default: (await import('../pages/lessons/lessons-dialog.tsx')).LessonsDialog })),
};

export function Dialogs() {
  const dialog = useBackbow((state) => state.dialog);
  const Shown = dialog === null ? undefined : DIALOGS[dialog];
  return <Suspense>{Shown && <Shown />}</Suspense>;
}
