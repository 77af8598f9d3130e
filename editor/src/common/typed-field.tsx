import type { ComponentPropsWithoutRef, ReactNode } from 'react';
import { useTyped } from './use-typed.ts';

interface Typing {
  readonly value: string;
  readonly onType: (typed: string) => void;
}

type Without<Tag extends 'input' | 'textarea'> = Omit<
  ComponentPropsWithoutRef<Tag>,
  'value' | 'defaultValue' | 'onChange'
>;

/** A line of text that is typed. */
export function TypedLine({ value, onType, ...more }: Typing & Without<'input'>): ReactNode {
  return <input {...more} {...useTyped<HTMLInputElement>(value, onType)} />;
}

/** Some lines of text that are typed. */
export function TypedLines({ value, onType, ...more }: Typing & Without<'textarea'>): ReactNode {
  return <textarea {...more} {...useTyped<HTMLTextAreaElement>(value, onType)} />;
}
