/** Why there is no picture to hand out. */
export type PictureFailure = 'no-picture-file' | 'not-drawn';

/** Thrown with a code, which is put into words where the picture was asked for. */
export class PictureFailed extends Error {
  readonly code: PictureFailure;

  constructor(code: PictureFailure) {
    super(code);
    this.name = 'PictureFailed';
    this.code = code;
  }
}
