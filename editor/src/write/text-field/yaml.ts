import type { languages as Languages } from 'monaco-editor/editor';
import { conf, language } from 'monaco-editor/languages/definitions/yaml/yaml';

/** How the field reads YAML: the colours of its words, and where a new line begins. */
export function defineYaml(languages: typeof Languages): void {
  languages.register({ id: 'yaml' });
  languages.setMonarchTokensProvider('yaml', language);
  const { Indent, None } = languages.IndentAction;
  languages.setLanguageConfiguration('yaml', {
    ...conf,
    // Deeper behind a colon, below the first word behind a dash.
    onEnterRules: [
      { beforeText: /^\s*-\s.*:\s*$/, action: { indentAction: Indent, appendText: '  ' } },
      { beforeText: /^\s*-\s+\S/, action: { indentAction: None, appendText: '  ' } },
      { beforeText: /:\s*$/, action: { indentAction: Indent } },
    ],
  });
}
