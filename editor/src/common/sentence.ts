/** A text that begins with a capital letter: `respiratory rate` is `Respiratory rate`. */
export const sentence = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);
