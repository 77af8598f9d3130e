/**
 * Whether a `Host` header is what this server is called, on this machine: a page from elsewhere that points its own name here gets
 * nothing.
 */
export const isOwnHost = (host: string | undefined, port: number): host is string =>
  host === `127.0.0.1:${port}` || host === `localhost:${port}`;
