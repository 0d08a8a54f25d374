/** A file that is dropped anywhere on the page. */
import { useEffect, useState } from 'react';

/** @param take told the file; the same function at every render. @returns whether a file is being held over the page */
export function useFileDrop(take: (file: File) => void): boolean {
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
      if (file) take(file);
    }
    window.addEventListener('dragover', onOver);
    window.addEventListener('dragleave', onLeave);
    window.addEventListener('drop', onDrop);
    return () => {
      window.removeEventListener('dragover', onOver);
      window.removeEventListener('dragleave', onLeave);
      window.removeEventListener('drop', onDrop);
    };
  }, [take]);
  return over;
}
