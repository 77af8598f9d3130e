import { afterEach, expect, test, vi } from 'vitest';
import { siteBelow } from '../../src/command-line/site-protocols.ts';

afterEach(() => {
  vi.unstubAllGlobals();
  vi.resetModules();
});

test('what stands beside the page is fetched once, and the protocols are those in it', async () => {
  const site = await siteBelow('protocols/lessons', true);
  const fetched: string[] = [];
  vi.stubGlobal('fetch', (url: string) => {
    fetched.push(url);
    return Promise.resolve(Response.json(site));
  });
  const { protocolsHere, siteHere } = await import('../../editor/src/common/fetch-protocols.ts');
  expect(await siteHere).toEqual(site);
  expect(await protocolsHere).toEqual(site.protocols);
  expect(fetched).toEqual(['protocols.json']);
});

test('a site that cannot be fetched is a failure for whoever asks, and for nobody else', async () => {
  vi.stubGlobal('fetch', () => Promise.resolve(new Response('', { status: 500 })));
  const { protocolsHere, siteHere } = await import('../../editor/src/common/fetch-protocols.ts');
  await expect(siteHere).rejects.toThrow('could not be fetched');
  await expect(protocolsHere).rejects.toThrow('could not be fetched');
});
