/** A text as Markdown that shows just that text: nothing in it becomes a link, a picture or any other markup. */
export const inMarkdown = (text: string): string =>
  text
    .replace(/[\\`*_{}[\]()#+\-.!|<>~&:/@"'=]/g, (sign) => `&#${sign.codePointAt(0) ?? 0};`)
    .replace(/\n/g, '  \n');
