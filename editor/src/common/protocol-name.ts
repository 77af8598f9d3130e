import type { SiteProtocol } from './site-protocol.ts';

/** The name by which others call a protocol: `a_curve` of `lessons/a_curve`. */
export const nameOf = ({ id }: Pick<SiteProtocol, 'id'>): string => id.split('/').at(-1) ?? id;
