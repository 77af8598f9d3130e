import {
  addCase,
  completionsAt,
  hoverAt,
  protocolReader,
  vitalSigns,
  Workbench,
  type AuthoringSurroundings,
  type Written,
} from '../../../../src/index.ts';
import type { Answers, CaseInFull, Checked, GivenSet, Opening, Question } from '../messages.ts';
import type { Texts } from '../parts.ts';
import { caseDraft } from './case-draft.ts';
import { checkedProtocol, linesHere } from './checked-protocol.ts';
import { caseInFull } from './case-in-full.ts';
import { checkWard, type CheckedWard } from './check-ward.ts';
import { MapMaker } from './map-maker.ts';
import { RequirementAnswers } from './requirement-answers.ts';
import { aroundOf, type Around } from './surroundings.ts';
import { UnguardedSteps } from './unguarded-steps.ts';

const casesFile = 'cases.yaml';

/** What a worker keeps of what is open: the last texts, and what they were read to. */
export class Bench {
  private around: Around | null = null;
  private workbench = new Workbench();
  private written: Written | null = null;
  private ward: CheckedWard | null = null;
  private readonly unguardedSteps = new UnguardedSteps();
  private readonly requirementAnswers = new RequirementAnswers();
  private maps = new MapMaker();

  open(question: Opening): void {
    this.around = aroundOf(question);
    this.workbench = new Workbench();
    this.maps = new MapMaker();
    this.written = null;
    this.ward = null;
  }

  check(texts: Texts): Checked {
    const around = this.opened();
    if (around.protocol.kind === 'ward') {
      this.ward = checkWard(around, texts);
      return this.ward.checked;
    }
    return checkedProtocol(this.writtenOf(texts), around.ladderOf(texts.protocol).problems, texts);
  }

  caseInFull(name: string): CaseInFull | null {
    const { written, ward } = this;
    const compiled = written?.compiled;
    const reader = compiled ? protocolReader(compiled) : (ward?.reader ?? null);
    const found = (written ?? ward)?.read.find((each) => each.name === name);
    if (!reader || !found) return null;
    const lines = (written?.rules ?? []).map((rule) => [rule.name, linesHere(rule)] as const);
    return caseInFull(name, reader, found.series, new Map(lines));
  }

  form(): Answers['form'] {
    const compiled = this.written?.compiled;
    return { form: compiled ? protocolReader(compiled).form : null };
  }

  draft(name: string, given: GivenSet): Answers['draft'] {
    const compiled = this.written?.compiled;
    if (compiled) return caseDraft(protocolReader(compiled), name, given);
    const problems = ['The protocol has problems: mend them first.'];
    return { problems, heading: null, couldBe: null, why: [], refused: [], yaml: null };
  }

  addCase({ cases, yaml, name }: Extract<Question, { kind: 'add_case' }>): Answers['add_case'] {
    return { splices: addCase(cases, yaml, { protocol: this.written?.compiled?.protocol.name ?? name }) };
  }

  map(question: Extract<Question, { kind: 'map' }>): Answers['map'] {
    const written = this.writtenOf(question.texts);
    return { map: written.compiled && this.maps.map(written.compiled, written, question) };
  }

  unguarded({ texts, version }: Extract<Question, { kind: 'unguarded' }>): Answers['unguarded'] {
    return this.unguardedSteps.goOn(version, () => {
      const { compiled, document, casesDocument } = this.writtenOf(texts);
      if (!compiled || !document || !casesDocument) return null;
      const surroundings = { dictionary: vitalSigns, ladder: compiled.protocol.ladder, today: null };
      return { document, compiled, cases: casesDocument, surroundings };
    });
  }

  requirements({ texts }: Extract<Question, { kind: 'requirements' }>): Answers['requirements'] {
    return this.requirementAnswers.of(this.writtenOf(texts).compiled);
  }

  offers({ part, texts, offset }: Extract<Question, { kind: 'offers' }>): Answers['offers'] {
    return { offers: completionsAt(this.asked(part, texts, offset)) };
  }

  hover({ part, texts, offset }: Extract<Question, { kind: 'hover' }>): Answers['hover'] {
    return { hover: hoverAt(this.asked(part, texts, offset)) };
  }

  private asked(part: keyof Texts, texts: Texts, offset: number): Parameters<typeof hoverAt>[0] {
    const around = this.opened();
    const isWard = around.protocol.kind === 'ward';
    const { ladder } = around.ladderOf(texts.protocol);
    const surroundings: AuthoringSurroundings = { ladder, parents: around.parents };
    return part === 'protocol'
      ? { kind: around.protocol.kind, text: texts.protocol, offset, surroundings }
      : {
          kind: isWard ? 'ward_cases' : 'cases',
          text: texts.cases,
          offset,
          surroundings: { ...surroundings, beside: texts.protocol },
        };
  }

  private opened(): Around {
    if (!this.around) throw new Error('nothing is open');
    return this.around;
  }

  private writtenOf(texts: Texts): Written {
    const around = this.opened();
    this.written = this.workbench.check(
      {
        protocol: { file: around.protocol.file, text: texts.protocol },
        cases: { file: casesFile, text: texts.cases },
      },
      around.ladderOf(texts.protocol).surroundings,
    );
    return this.written;
  }
}
