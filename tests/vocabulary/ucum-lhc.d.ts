/** The part of the UCUM library that judges units in the tests; the library brings no types of its own. */
declare module '@lhncbc/ucum-lhc' {
  interface Judge {
    readonly convertUnitTo: (
      from: string,
      value: number,
      to: string,
    ) => { readonly status: 'succeeded' | 'failed' | 'error'; readonly toVal: number | null };
    readonly validateUnitString: (code: string) => { readonly status: 'valid' | 'invalid' | 'error' };
  }
  export const UcumLhcUtils: { readonly getInstance: () => Judge };
}
