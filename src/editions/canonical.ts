import canonicalize from 'canonicalize';

/** A value as canonical JSON (RFC 8785): one text for one value, whatever the order of its keys. */
export const canonicalText = (value: unknown): string => canonicalize(value) ?? '';

/** A copy of plain data without keys that have no value, as JSON would carry it. */
export const asJson = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;
