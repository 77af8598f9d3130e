import { chromium } from 'playwright-core';
const [,, width, ...steps] = process.argv;
const b = await chromium.launch({ executablePath: '/usr/bin/chromium' });
const p = await b.newPage({ viewport: { width: Number(width), height: 1000 } });
p.on('console', m => m.type()==='error' && console.log('console', m.text())); p.on('pageerror', e => console.log('pageerror', e.message));
for (const s of steps) {
  const [name, hash, wait] = s.split('|');
  await p.goto('http://127.0.0.1:4755/' + hash); await p.waitForTimeout(Number(wait ?? 15000));
  await p.screenshot({ path: `/tmp/shots/${name}-${width}.png`, fullPage: true });
  const over = await p.evaluate(() => document.documentElement.scrollWidth - innerWidth); console.log(name, width, 'overflow', over);
}
await b.close();
