import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { read3mf } from '../../../src/meshes/readers/threeMf';
import { modelXml, package3mf } from '../files';

const told = (detail: string | RegExp) => ({
  kind: 'malformed',
  format: '3mf',
  detail: typeof detail === 'string' ? detail : expect.stringMatching(detail),
});

function faultOf(bytes: Uint8Array) {
  const result = read3mf(bytes, () => {});
  return result.ok ? undefined : result.error;
}
function valueOf(bytes: Uint8Array) {
  const result = read3mf(bytes, () => {});
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
}

const VERTICES =
  '<vertex x="0" y="0" z="0"/><vertex x="1" y="0" z="0"/><vertex x="0" y="1" z="0"/>';
const FACE = '<triangle v1="0" v2="1" v3="2"/>';
const meshOf = (vertices: string, faces: string) =>
  `<mesh><vertices>${vertices}</vertices><triangles>${faces}</triangles></mesh>`;
const objectOf = (id: string, inside: string) => `<object id="${id}">${inside}</object>`;
const BODY = objectOf('1', meshOf(VERTICES, FACE));
const ITEM = '<item objectid="1"/>';
const WHOLE = modelXml(BODY, ITEM);
const holding = (id: string, ...parts: string[]) =>
  objectOf(
    id,
    `<components>${parts.map((part) => `<component objectid="${part}"/>`).join('')}</components>`,
  );

describe('the relationships of a 3MF', () => {
  const TYPE = 'http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel';
  const link = (target: string, name = 'Relationship') =>
    `<${name} Type="${TYPE}" Target="${target}"/>`;
  const withRels = (rels: string | Uint8Array) =>
    zipSync({
      '_rels/.rels': typeof rels === 'string' ? strToU8(rels) : rels,
      'a.model': strToU8(WHOLE),
    });

  it('name the model, whatever their prefix, the first one of several', () => {
    for (const name of ['Relationship', 'r:Relationship', 'rel:Relationship', 'a:b:Relationship']) {
      expect(
        faultOf(withRels(`<a>${link('/a.model', name)}${link('/b.model')}</a>`)),
      ).toBeUndefined();
    }
    expect(faultOf(withRels(`<a>${link('/b.model')}${link('/a.model')}</a>`))).toEqual(
      told('lacks a part that it names (b.model)'),
    );
    const long = 'x'.repeat(100);
    expect(faultOf(withRels(`<a>${link(`/${long}`)}</a>`))).toEqual(
      told(`lacks a part that it names (${long.slice(0, 60)})`),
    );
  });

  it('that name none say so', () => {
    const none = told('does not say where its model is');
    expect(faultOf(withRels('<a/>'))).toEqual(none);
    expect(faultOf(withRels(`<a><Relationship Type="${TYPE}"/></a>`))).toEqual(none);
    expect(faultOf(withRels(`<a>${link('', 'Relationship')}</a>`))).toEqual(none);
    for (const name of ['Relation', 'xRelationship', 'Relationship:x']) {
      expect(faultOf(withRels(`<a>${link('/a.model', name)}</a>`))).toEqual(none);
    }
  });

  it('are XML without a document type, in UTF-8', () => {
    expect(faultOf(withRels(`<a>${link('/a.model')}</b>`))).toEqual(
      told(/^has broken relationships/),
    );
    expect(faultOf(withRels(`<a>${link('/a.model')}`))).toEqual(told(/^has broken relationships/));
    expect(faultOf(withRels(`<!DOCTYPE a><a>${link('/a.model')}</a>`))).toEqual(
      told('has relationships with a document type'),
    );
    const bytes = strToU8(`<a x="xx">${link('/a.model')}</a>`);
    const text = told('has a part that is not UTF-8 text (_rels/.rels)');
    expect(faultOf(withRels(bytes.with(6, 0xff)))).toEqual(text);
    // Cut inside a letter at the very end.
    expect(faultOf(withRels(Uint8Array.from([...bytes, 0xc3])))).toEqual(text);
    expect(faultOf(zipSync({ 'a.model': strToU8(WHOLE) }))).toEqual(
      told('is a ZIP package, but not a 3MF one'),
    );
  });
});

describe('the text of a model', () => {
  it('may have letters of several bytes cut between two pieces of what is unpacked', () => {
    // Letters that do not pack well, so that many pieces come of them.
    const noise = Array.from({ length: 20_000 }, (_, k) =>
      String.fromCharCode(0x100 + (((k * k * 7919) % 65_521) % 0x600)),
    ).join('');
    const bytes = package3mf(WHOLE.replace('<build>', `<!--${noise}--><build>`));
    const shares: number[] = [];
    expect(read3mf(bytes, (share) => shares.push(share))).toMatchObject({ ok: true });
    // The relationships in one piece, then the model in several, each of them further on.
    expect(shares[0]).toBe(1);
    const model = shares.slice(1);
    expect(model.length).toBeGreaterThan(5);
    expect(model[0]).toBeLessThan(0.5);
    expect(model.at(-1)).toBe(1);
    expect(model).toEqual(model.toSorted((a, b) => a - b));
  });

  it.each([
    ['a tag that is not closed', `${WHOLE}<x`, /^has a model that is not XML/],
    [
      'an entity',
      WHOLE.replace('<build>', '<a b="&what;"/><build>'),
      /^has a model that is not XML/,
    ],
    ['nothing', '', /^has a model that is not XML/],
    ['a document type', WHOLE.replace('<model', '<!DOCTYPE m><model'), /document type/],
    ['another root', WHOLE.replaceAll('model', 'modal'), /begins with <modal> of another kind/],
    ['another namespace', WHOLE.replace('core/2015', 'core/2016'), /begins with <model>/],
    ['no namespace', WHOLE.replace('xmlns=', 'xmlnt='), /begins with <model>/],
    ['an object without id', modelXml(BODY + BODY.replace('id="1"', ''), ITEM), /without id/],
    ['an id twice', modelXml(BODY + BODY, ITEM), /with a repeated id/],
    ['an item of nothing', modelXml(BODY, '<item/>'), /^places an object without naming it/],
    [
      'an item of an object that is not there',
      modelXml(BODY, `<item objectid="${'9'.repeat(30)}"/>`),
      /^places the object 9{20}, which is not there/,
    ],
    [
      'a point of no number',
      modelXml(objectOf('1', meshOf(`${VERTICES}<vertex x="0" y="a" z="0"/>`, FACE)), ITEM),
      /not a number in point 4$/,
    ],
    [
      'a point far out',
      modelXml(objectOf('1', meshOf(`<vertex x="2e9" y="0" z="0"/>${VERTICES}`, FACE)), ITEM),
      /of 2000000000 in point 1, beyond/,
    ],
    [
      'a point of no height',
      modelXml(objectOf('1', meshOf(`${VERTICES}<vertex x="0" y="0"/>`, FACE)), ITEM),
      /not a number in point 4$/,
    ],
    [
      'a word in a transform',
      modelXml(BODY, '<item objectid="1" transform="1 0 0 0 1 0 0 0 1 0 0 x"/>'),
      /^has a transform of other than twelve numbers \("1 0 0/,
    ],
    [
      'words for a transform',
      modelXml(BODY, '<item objectid="1" transform="a b c d e f g h i j k l"/>'),
      /^has a transform of other than twelve numbers/,
    ],
    [
      'an infinite transform',
      modelXml(BODY, '<item objectid="1" transform="1 0 0 0 1 0 0 0 1 0 0 1e999"/>'),
      /^has a transform of other than twelve numbers/,
    ],
    [
      'a placing out of all bounds',
      modelXml(BODY, '<item objectid="1" transform="2e9 0 0 0 1 0 0 0 1 0 0 0"/>'),
      /^has a coordinate of 2000000000 in a placed object/,
    ],
  ])('with %s says so', (_, model, detail) => {
    expect(faultOf(package3mf(model))).toEqual(told(detail));
  });

  it('has corners of triangles that are whole numbers of points that are there', () => {
    const eleven = VERTICES + '<vertex x="5" y="5" z="5"/>'.repeat(8);
    const fault = (word: string) =>
      faultOf(
        package3mf(modelXml(objectOf('1', meshOf(eleven, FACE.replace('v1="0"', word))), ITEM)),
      );
    expect(fault('v1="10"')).toBeUndefined();
    expect(fault('v1="11"')).toEqual(told('has a triangle that names point 11 of 11'));
    for (const word of ['', '1x', 'x1', '1.0', '-1', '1e1', '1234567890']) {
      expect(fault(`v1="${word}"`)).toEqual(told(`has a triangle with the corner "${word}"`));
    }
    expect(fault('')).toEqual(told('has a triangle with the corner ""'));
  });

  it('passes over points, triangles and components that belong to no object', () => {
    const stray = `<vertex x="a"/>${FACE}<component objectid="7"/>`;
    expect(valueOf(package3mf(modelXml(stray + BODY, ITEM))).triangles.length).toBe(3);
  });

  it('under a prefix has no elements without it, and under none no elements with one', () => {
    const prefixed = WHOLE.replace('xmlns=', 'xmlns:core=')
      .replaceAll(/<(\/?)(\w)/g, '<$1core:$2')
      .replace('<core:build>', '<triangle v1="x"/><item objectid="9"/><core:build>');
    expect(valueOf(package3mf(prefixed)).triangles.length).toBe(3);
    const foreign = modelXml(BODY, `${ITEM}<x:item objectid="9"/>`);
    expect(valueOf(package3mf(foreign)).triangles.length).toBe(3);
    const others = prefixed.replace('<core:build>', '<more:item objectid="9"/><core:build>');
    expect(valueOf(package3mf(others)).triangles.length).toBe(3);
  });
});

describe('objects in objects', () => {
  it('say that one is a component of itself', () => {
    const itself = told('has an object that is a component of itself');
    expect(faultOf(package3mf(modelXml(holding('1', '1'), ITEM)))).toEqual(itself);
    expect(faultOf(package3mf(modelXml(holding('1', '2') + holding('2', '1'), ITEM)))).toEqual(
      itself,
    );
  });

  it('of nothing, however often doubled, take no time beside one that is something', () => {
    const doubles = Array.from({ length: 40 }, (_, k) =>
      holding(`d${k + 1}`, `d${k}`, `d${k}`),
    ).join('');
    const model = modelXml(`<object id="d0"/>${doubles}${BODY}`, `<item objectid="d40"/>${ITEM}`);
    expect(valueOf(package3mf(model)).triangles.length).toBe(3);
  });

  it('with points and no triangles of their own leave none of their points', () => {
    const outer = `<object id="2">${meshOf('<vertex x="9" y="9" z="9"/>', '')}<components><component objectid="1"/></components></object>`;
    const value = valueOf(package3mf(modelXml(BODY + outer, '<item objectid="2"/>')));
    expect([value.positions.length, value.triangles.length]).toEqual([9, 3]);
    // A support of no triangles is none.
    const support = `<object id="3" type="support"><components><component objectid="1"/></components></object>`;
    const bare = valueOf(package3mf(modelXml(BODY + support, '<item objectid="3"/>')));
    expect([bare.triangles.length, bare.notes]).toEqual([3, []]);
  });
});
