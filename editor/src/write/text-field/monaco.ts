import { editor, languages } from 'monaco-editor/editor';
import 'monaco-editor/editor/browser/coreCommands';
import 'monaco-editor/editor/contrib/suggest/browser/suggestController';
import 'monaco-editor/features/codeAction/register';
import 'monaco-editor/features/find/register';
import 'monaco-editor/features/hover/register';
import 'monaco-editor/features/wordOperations/register';
import { defineTheme } from './theme.ts';
import { defineYaml } from './yaml.ts';

// Only what a text of this kind needs is loaded. What the field offers, shows and marks is the kit's own, from this room's worker;
// nothing here asks a worker of the field's own, so there is none.
defineTheme(editor);
defineYaml(languages);

export { editor, languages };
export { KeyCode, KeyMod, MarkerSeverity, Range, Uri, type Position } from 'monaco-editor/editor';
