/** The path of a browser: that of CHROME_PATH, or one in a usual place. Null when there is none. */
export function findBrowser(): string | null;
