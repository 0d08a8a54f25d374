/** Dropping a project file anywhere on the page opens it. */
import { useEffect, useState } from 'react';
import { store } from '../state/store.ts';
import { readProjectFile } from '../pages/workshop/project/project-file.ts';

/** @returns whether a file is being held over the page */
export function useProjectDrop(): boolean {
  const [over, setOver] = useState(false);
  useEffect(() => {
    const carriesFile = (event: DragEvent) => event.dataTransfer?.types.includes('Files') ?? false;
    function onOver(event: DragEvent): void {
      if (!carriesFile(event)) return;
      event.preventDefault();
      setOver(true);
    }
    function onLeave(event: DragEvent): void {
      if (event.relatedTarget === null) setOver(false);
    }
    function onDrop(event: DragEvent): void {
      if (!carriesFile(event)) return;
      event.preventDefault();
      setOver(false);
      const file = event.dataTransfer?.files[0];
      if (file) void readProjectFile(store, file);
    }
    window.addEventListener('dragover', onOver);
    window.addEventListener('dragleave', onLeave);
    window.addEventListener('drop', onDrop);
    return () => {
      window.removeEventListener('dragover', onOver);
      window.removeEventListener('dragleave', onLeave);
      window.removeEventListener('drop', onDrop);
    };
  }, []);
  return over;
}
