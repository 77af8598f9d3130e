/** Addresses below the rooms that the command line and the rooms both name. */
export const siteFiles = {
  protocols: 'protocols.json',
  save: 'save',
  decide: 'decide',
  seal: 'seal',
  editions: 'editions',
  stored: 'stored.json',
} as const;
