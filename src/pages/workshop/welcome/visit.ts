/** Whether somebody is here for the first time, kept on the device. */
const KEY = 'backbow.welcomed';

/** Where nothing can be remembered, nobody is welcomed again and again. */
export function isFirstVisit(): boolean {
  try {
    return localStorage.getItem(KEY) === null;
  } catch {
    return false;
  }
}

export function rememberVisit(): void {
  try {
    localStorage.setItem(KEY, '1');
  } catch {
    // The welcome may come again; it can be ignored again.
  }
}
