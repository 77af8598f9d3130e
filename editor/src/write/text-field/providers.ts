import type { Completion } from '../../../../src/index.ts';
import { ask } from '../ask.ts';
import { writtenIn } from '../desk/desk.ts';
import type { ProblemHere } from '../messages.ts';
import { inMarkdown } from './in-markdown.ts';
import { languages, Range, type editor, type Position } from './monaco.ts';

let isDone = false;

/** Has the field offer, explain and mend what this room's worker knows. Once for the page. */
export function provideHelp(): void {
  if (isDone) return;
  isDone = true;
  // Signs of the field's own are a font: it must be there before the network may be gone.
  document.fonts.load('16px codicon').catch(() => undefined);
  languages.registerCompletionItemProvider('yaml', {
    triggerCharacters: [' ', ':', '{', '[', ',', '-'],
    provideCompletionItems: offersAt,
  });
  languages.registerHoverProvider('yaml', { provideHover: hoverAt });
  languages.registerCodeActionProvider('yaml', { provideCodeActions: mendsAt });
}

const kindWords: Readonly<Record<Completion['what'], string>> = {
  key: 'key',
  comparison: 'comparison',
  observation: 'observation',
  measure: 'measure',
  limit: 'limit',
  rule: 'rule',
  level: 'level',
  choice: 'choice',
  unit: 'unit',
  source: 'source',
  action: 'action',
  fault: 'fault of technique',
  protocol: 'protocol',
  ladder: 'ladder',
  word: 'word',
};

async function offersAt(
  model: editor.ITextModel,
  position: Position,
): Promise<languages.CompletionList | undefined> {
  const place = writtenIn(model);
  if (!place) return undefined;
  const offset = model.getOffsetAt(position);
  const { offers } = await ask<'offers'>({
    kind: 'offers',
    part: place.part,
    texts: place.desk.texts(),
    offset,
  });
  // What is offered was found for what is written: it is asked anew at every key, and not sifted again by the field.
  return {
    incomplete: true,
    suggestions: offers.map((offer, index) => suggestion(offer, index, offset, model)),
  };
}

function suggestion(
  { label, insert, caret, from, to, what, says }: Completion,
  index: number,
  offset: number,
  model: editor.ITextModel,
): languages.CompletionItem {
  const escaped = (text: string): string => text.replace(/[\\$}]/g, '\\$&');
  return {
    label: { label, description: kindWords[what] },
    kind: languages.CompletionItemKind.Text,
    insertText: `${escaped(insert.slice(0, caret))}$0${escaped(insert.slice(caret))}`,
    insertTextRules: languages.CompletionItemInsertTextRule.InsertAsSnippet,
    filterText: model.getValueInRange(
      Range.fromPositions(model.getPositionAt(from), model.getPositionAt(offset)),
    ),
    sortText: String(index).padStart(4, '0'),
    documentation: { value: inMarkdown(says) },
    range: Range.fromPositions(model.getPositionAt(from), model.getPositionAt(to)),
  };
}

async function hoverAt(model: editor.ITextModel, position: Position): Promise<languages.Hover | undefined> {
  const place = writtenIn(model);
  if (!place) return undefined;
  const offset = model.getOffsetAt(position);
  const { hover } = await ask<'hover'>({
    kind: 'hover',
    part: place.part,
    texts: place.desk.texts(),
    offset,
  });
  if (!hover) return undefined;
  return {
    range: Range.fromPositions(model.getPositionAt(hover.from), model.getPositionAt(hover.to)),
    contents: hover.says.map((line) => ({ value: inMarkdown(line) })),
  };
}

function mendsAt(model: editor.ITextModel, range: Range): languages.CodeActionList {
  const place = writtenIn(model);
  const here = ({ part, line }: ProblemHere): boolean =>
    part === place?.part && line >= range.startLineNumber && line <= range.endLineNumber;
  const mends = place?.desk.problems.filter(here).flatMap((problem) => problem.mends) ?? [];
  const actions = mends.map(({ title, splices }) => ({
    title,
    kind: 'quickfix',
    isPreferred: true,
    edit: {
      edits: splices.map(({ from, to, text }) => ({
        resource: model.uri,
        versionId: model.getVersionId(),
        textEdit: { range: Range.fromPositions(model.getPositionAt(from), model.getPositionAt(to)), text },
      })),
    },
  }));
  return { actions, dispose: () => undefined };
}
