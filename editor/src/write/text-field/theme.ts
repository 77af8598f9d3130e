import type { editor as Editor } from 'monaco-editor/editor';

export const themeName = 'vitalwright';

/** The text in the palette of the rooms: what is declared in teal, words in plum, numbers in brown; each also differs in weight or slant. */
export function defineTheme(editor: typeof Editor): void {
  editor.defineTheme(themeName, {
    base: 'vs',
    inherit: false,
    rules: [
      { token: '', foreground: '1f2430' },
      { token: 'type', foreground: '17525c', fontStyle: 'bold' },
      { token: 'string', foreground: '4f3477' },
      { token: 'number', foreground: '7a3b00' },
      { token: 'keyword', foreground: '7a3b00' },
      { token: 'comment', foreground: '545b6b', fontStyle: 'italic' },
    ],
    colors: {
      'editor.background': '#fffdf8',
      'editor.foreground': '#1f2430',
      ...Object.fromEntries(
        [1, 2, 3, 4, 5, 6].map((level) => [`editorBracketHighlight.foreground${level}`, '#1f2430']),
      ),
      'editorLineNumber.foreground': '#6b6f7a',
      'editorLineNumber.activeForeground': '#1f2430',
      'editor.selectionBackground': '#c3dcdf',
      'editor.inactiveSelectionBackground': '#e2eeee',
      'editor.lineHighlightBackground': '#f4f1ea',
      'editorCursor.foreground': '#0b3fa8',
      'editorIndentGuide.background1': '#e6e1d6',
      'editorError.foreground': '#7a3b00',
      'editorWarning.foreground': '#664892',
      'editorWidget.background': '#fffdf8',
      'editorWidget.foreground': '#1f2430',
      'editorWidget.border': '#837d72',
      'editorSuggestWidget.background': '#fffdf8',
      'editorSuggestWidget.border': '#837d72',
      'editorSuggestWidget.foreground': '#1f2430',
      'editorSuggestWidget.selectedBackground': '#17525c',
      'editorSuggestWidget.selectedForeground': '#ffffff',
      'editorSuggestWidget.focusHighlightForeground': '#ffffff',
      'editorSuggestWidget.highlightForeground': '#17525c',
      'editorHoverWidget.background': '#fffdf8',
      'editorHoverWidget.foreground': '#1f2430',
      'editorHoverWidget.border': '#837d72',
      focusBorder: '#0b3fa8',
      'scrollbarSlider.background': '#a39d90b0',
      'scrollbarSlider.hoverBackground': '#837d72',
      'scrollbarSlider.activeBackground': '#545b6b',
      'input.background': '#fffdf8',
      'input.foreground': '#1f2430',
      'input.border': '#837d72',
      'list.hoverBackground': '#e2eeee',
      'list.focusBackground': '#17525c',
      'list.focusForeground': '#ffffff',
    },
  });
}
