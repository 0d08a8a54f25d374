/** Version of the program, as written on sheets and into files; a test holds it to package.json. */
export const PROGRAM_VERSION = '0.1.0';
