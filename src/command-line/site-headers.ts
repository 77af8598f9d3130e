/** What is answered to one request, before it is sent. */
export interface SiteAnswer {
  readonly status: number;
  readonly headers: Readonly<Record<string, string>>;
  readonly body: Buffer | string;
}

/** Only what stands on this server is loaded; nothing is sent anywhere else, and no code is made from text. */
const contentPolicy = [
  `default-src 'none'`,
  `script-src 'self'`,
  `worker-src 'self'`,
  `style-src 'self' 'unsafe-inline'`,
  `font-src 'self'`,
  `img-src 'self' data:`,
  `connect-src 'self'`,
  `base-uri 'none'`,
  `form-action 'none'`,
  `frame-ancestors 'none'`,
].join('; ');

/** Sent with every answer. */
export const commonHeaders = {
  'Content-Security-Policy': contentPolicy,
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Cache-Control': 'no-store',
} as const;
