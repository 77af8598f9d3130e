import type { Locator, Page } from 'playwright-core';

/** Ways to see that a browser can imitate. */
export const visions = ['none', 'achromatopsia', 'deuteranopia', 'protanopia', 'tritanopia'] as const;

/** Relative luminance of the right end of something, as it comes to the eye: 0 black to 1 white. */
export async function lightAt(page: Page, what: string | Locator): Promise<number> {
  const place = typeof what === 'string' ? page.locator(what) : what;
  await place.scrollIntoViewIfNeeded();
  const box = await place.boundingBox();
  if (!box) throw new Error('it is not shown');
  const clip = { x: box.x + box.width - 12, y: box.y + box.height / 2, width: 4, height: 4 };
  const picture = (await page.screenshot({ clip })).toString('base64');
  const reader = await page.context().newPage();
  const [red = 0, green = 0, blue = 0] = await reader.evaluate<number[]>(`(async () => {
    const picture = new Image();
    picture.src = 'data:image/png;base64,${picture}';
    await picture.decode();
    const canvas = Object.assign(document.createElement('canvas'), { width: 4, height: 4 });
    const drawing = canvas.getContext('2d');
    drawing.drawImage(picture, 0, 0);
    return [...drawing.getImageData(1, 1, 1, 1).data];
  })()`);
  await reader.close();
  const [r, g, b] = [red, green, blue].map((part) => {
    const share = part / 255;
    return share <= 0.040_45 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
