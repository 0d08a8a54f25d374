/** The picture that is mounted now, for saving it: the shell puts it here, the page of files reads it. */
import type { NeckSceneHandle } from '../../scene/types.ts';

let mounted: NeckSceneHandle | null = null;

/** For the `ref` of the scene. */
export function keepPicture(handle: NeckSceneHandle | null): void {
  mounted = handle;
}

export function pictureNow(): NeckSceneHandle | null {
  return mounted;
}
