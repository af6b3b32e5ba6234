import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parseDesign, serializeDesign } from '../../src/design/file';
import { jsonSchemaText } from '../../src/design/jsonSchema';
import type { Parameter } from '../../src/parts/contract';
import { PART_TYPES } from '../../src/parts/registry';
import { designOf, fullHead } from './designs';

const file = new URL('../../assets/stillgrip-design.schema.json', import.meta.url);

interface Definition {
  readonly properties: Readonly<Record<string, Record<string, unknown>>>;
  readonly required: readonly string[];
  readonly additionalProperties: boolean;
  readonly oneOf?: unknown;
}

function mayBeLeftOut(spec: Parameter): boolean {
  return spec.optional === true || (spec.type === 'number' && spec.materialKey !== undefined);
}

describe('the JSON Schema in assets', () => {
  test('is what the code generates: run `npm run schema` after a change of parameters', () => {
    expect(existsSync(file)).toBe(true);
    expect(readFileSync(file, 'utf8')).toBe(jsonSchemaText());
  });

  test('gives every part type its parameters, limits and words, and closes it to other keys', () => {
    const schema = JSON.parse(jsonSchemaText()) as Definition;
    const parts = schema.properties.parts as unknown as { items: { oneOf: Definition[] } };
    expect(parts.items.oneOf.length).toBe(PART_TYPES.length);
    for (const [i, type] of PART_TYPES.entries()) {
      const part = parts.items.oneOf[i];
      expect(part.properties.kind.const).toBe(type.kind);
      expect(part.additionalProperties).toBe(false);
      expect(part.oneOf).toEqual([{ required: ['pose'] }, { required: ['socket'] }]);
      for (const [name, spec] of Object.entries(type.parameters)) {
        const own = part.properties[name];
        // What a row, a material or a default may give can be left out.
        const given = mayBeLeftOut(spec) || 'catalogue' in type;
        expect(part.required.includes(name)).toBe(!given);
        expect(own.description).toBe(spec.help);
        if (spec.type === 'text') expect(own.maxLength).toBe(spec.maxLength);
        if (spec.type === 'text' || spec.type === 'numbers') continue;
        const [number] = (own.prefixItems as Record<string, unknown>[] | undefined) ?? [own];
        if (spec.type === 'choice') expect(own.enum).toEqual(spec.options);
        else expect([number.minimum, number.maximum]).toEqual([spec.min, spec.max]);
      }
    }
  });

  test('says what the checks say of sound designs and of damaged ones', () => {
    const schema = JSON.parse(readFileSync(file, 'utf8')) as Node;
    const sound = JSON.parse(serializeDesign(designOf(fullHead()))) as Record<string, unknown>;
    const parts = sound.parts as Record<string, unknown>[];
    const lump = parts[11];
    const withLump = (more: object) => ({ ...sound, parts: [{ ...lump, ...more }] });
    expect(conforms(sound, schema)).toBe(true);
    const kept = {
      ...sound,
      tryOuts: [
        { id: 'b', name: 'B', parts },
        { id: 'a', name: 'A' },
      ],
    };
    expect(conforms(kept, schema)).toBe(true);
    const keptLump = (more: object) => ({
      ...sound,
      tryOuts: [
        { id: 'b', name: 'B', parts: [{ ...lump, ...more }] },
        { id: 'a', name: 'A' },
      ],
    });
    for (const bad of [
      keptLump({ massGrams: -1 }),
      { ...sound, tryOuts: [{ id: 'a', name: 'A', adopted: false }] },
      { ...sound, more: 1 },
      { ...sound, version: 2 },
      withLump({ massGrams: -1 }),
      withLump({ massGrams: undefined }),
      withLump({ id: '' }),
      withLump({ kind: 'lump' }),
      withLump({ pose: undefined }),
      withLump({ socket: { part: 'bolt', name: 'thread' } }),
      withLump({ pose: { positionMm: [1, 2], rotationDeg: [0, 0, 0] } }),
    ]) {
      const document = JSON.parse(JSON.stringify(bad)) as unknown;
      expect(conforms(document, schema)).toBe(false);
      expect(parseDesign(JSON.stringify(document)).ok).toBe(false);
    }
  });
});

type Node = Readonly<Record<string, unknown>>;

/** The keywords of JSON Schema that the file uses, as the standard defines them; an unknown one throws. */
function conforms(value: unknown, schema: Node, root = schema): boolean {
  return Object.entries(schema).every(([keyword, limit]) => {
    const number = Number(limit);
    const list = Array.isArray(value) ? value : [];
    const object = typeof value === 'object' && value !== null ? (value as Node) : {};
    switch (keyword) {
      case 'type':
        return limit === 'integer' ? Number.isInteger(value) : typeOf(value) === limit;
      case 'const':
        return value === limit;
      case 'enum':
        return (limit as unknown[]).includes(value);
      case 'minimum':
        return typeof value !== 'number' || value >= number;
      case 'maximum':
        return typeof value !== 'number' || value <= number;
      case 'minLength':
        return typeof value !== 'string' || value.length >= number;
      case 'maxLength':
        return typeof value !== 'string' || value.length <= number;
      case 'minItems':
        return list.length >= number;
      case 'maxItems':
        return list.length <= number;
      case 'prefixItems':
        return (limit as Node[]).every(
          (item, i) => i >= list.length || conforms(list[i], item, root),
        );
      case 'items':
        // False beside prefixItems: no more than those, which maxItems says too.
        return limit === false || list.every((item) => conforms(item, limit as Node, root));
      case 'required':
        return (limit as string[]).every((key) => Object.hasOwn(object, key));
      case 'properties':
        return Object.entries(limit as Record<string, Node>).every(
          ([key, own]) => !Object.hasOwn(object, key) || conforms(object[key], own, root),
        );
      case 'additionalProperties':
        return Object.keys(object).every((key) => Object.hasOwn(schema.properties as Node, key));
      case 'oneOf':
        return (limit as Node[]).filter((option) => conforms(value, option, root)).length === 1;
      case '$ref':
        return conforms(value, pointedAt(String(limit), root), root);
      case '$schema':
      case 'title':
      case 'description':
        return true;
      default:
        throw new Error(`keyword is not known: ${keyword}`);
    }
  });
}

/** The place in the whole schema that a reference within it names (JSON pointer, RFC 6901, without escapes). */
function pointedAt(reference: string, root: Node): Node {
  const steps = reference.replace(/^#\//, '').split('/');
  return steps.reduce<Node>((node, step) => node[step] as Node, root);
}

function typeOf(value: unknown): string {
  return Array.isArray(value) ? 'array' : typeof value;
}
