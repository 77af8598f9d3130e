/** Files of the built rooms that the command line and the rooms both name. */
export const siteFiles = { protocols: 'protocols.json' } as const;
