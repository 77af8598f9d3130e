/** What makes a link: the document of a page. */
interface LinkMaker {
  createElement(name: 'a'): { href: string; download: string; click(): void };
}

/**
 * Gives a text to whoever sits here as a file in their downloads, for a site that cannot save. The text stands in the address of a link, in
 * UTF-8; nothing is fetched, and nothing has to be allowed for it.
 *
 * `download('protocol.yaml', text, document)`
 */
export function download(name: string, text: string, page: LinkMaker): void {
  const link = page.createElement('a');
  link.download = name;
  link.href = `data:text/yaml;charset=utf-8,${encodeURIComponent(text)}`;
  link.click();
}
