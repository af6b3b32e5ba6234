import { strToU8, zipSync } from 'fflate';
import { DESIGN_NAMESPACE } from '../../state/carried/carried';
import { DESIGN_PART } from '../../state/carried/threeMfDesign';
import { bodyMesh, perMetre, type SolidUnit } from './bodyMesh';
import { hexColour } from './colours';
import type { FileBody } from './fileBodies';
import { xmlText } from './xmlText';

export interface ThreeMfOptions {
  readonly title: string;
  readonly description: string;
  readonly unit: SolidUnit;
  readonly segmentsPerTurn: number;
  /** Day of making, ISO 8601. */
  readonly date: string;
  /** Text of the design that the file carries with it. */
  readonly design: string;
}

const CORE = 'http://schemas.microsoft.com/3dmanufacturing/core/2015/02';
const MODEL_RELATION = 'http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel';
const PACKAGE = 'http://schemas.openxmlformats.org/package/2006';
const XML = '<?xml version="1.0" encoding="UTF-8"?>\n';

/**
 * A 3MF package (3MF Core Specification 1.3): one object a part with its name and material, joined in one assembly
 * where there are several, and the design as a file in it, so that the package opens again as the design it came from.
 */
export function threeMfFile(bodies: readonly FileBody[], options: ThreeMfOptions): Uint8Array {
  return zipSync(
    {
      '[Content_Types].xml': strToU8(CONTENT_TYPES),
      '_rels/.rels': strToU8(RELATIONS),
      '3D/3dmodel.model': strToU8(modelXml(bodies, options)),
      [DESIGN_PART]: strToU8(options.design),
    },
    { level: 3 },
  );
}

const CONTENT_TYPES = `${XML}<Types xmlns="${PACKAGE}/content-types">
<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>
<Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/>
<Default Extension="json" ContentType="application/json"/>
</Types>
`;
const RELATIONS = `${XML}<Relationships xmlns="${PACKAGE}/relationships">
<Relationship Target="/3D/3dmodel.model" Id="model" Type="${MODEL_RELATION}"/>
<Relationship Target="/${DESIGN_PART}" Id="design" Type="${DESIGN_NAMESPACE}"/>
</Relationships>
`;

const MATERIALS_ID = 1;
const FIRST_OBJECT = 2;

function modelXml(bodies: readonly FileBody[], options: ThreeMfOptions): string {
  const materials = [...new Map(bodies.map((body) => [materialKey(body), body])).keys()];
  const objects = bodies.map((body, i) =>
    objectXml(body, FIRST_OBJECT + i, materials.indexOf(materialKey(body)), options),
  );
  const assembly = FIRST_OBJECT + bodies.length;
  const together = bodies.length > 1;
  if (together) {
    const components = bodies.map((_, i) => `<component objectid="${FIRST_OBJECT + i}"/>\n`);
    objects.push(
      `<object id="${assembly}" type="model" name="${xmlText(options.title)}">\n<components>\n${components.join('')}</components>\n</object>\n`,
    );
  }
  const unit = options.unit === 'mm' ? 'millimeter' : 'inch';
  return [
    `${XML}<model unit="${unit}" xml:lang="en" xmlns="${CORE}">\n`,
    ...metadata(options),
    '<resources>\n',
    materialsXml(bodies, materials),
    ...objects,
    '</resources>\n<build>\n',
    bodies.length === 0 ? '' : `<item objectid="${together ? assembly : FIRST_OBJECT}"/>\n`,
    '</build>\n</model>\n',
  ].join('');
}

function metadata({ title, description, date }: ThreeMfOptions): string[] {
  const entries = [
    ['Title', title],
    ['Description', description],
    ['Application', 'Stillgrip'],
    ['CreationDate', date],
  ];
  return entries.map(([name, text]) => `<metadata name="${name}">${xmlText(text)}</metadata>\n`);
}

/** Two parts of one material and finish share its entry. */
function materialKey({ material, finish }: FileBody): string {
  return `${finish} ${material}`;
}

function materialsXml(bodies: readonly FileBody[], materials: readonly string[]): string {
  const entries = materials.map((key) => {
    const body = bodies.find((one) => materialKey(one) === key) as FileBody;
    return `<base name="${xmlText(body.material)}" displaycolor="${hexColour(body.finish)}"/>\n`;
  });
  return `<basematerials id="${MATERIALS_ID}">\n${entries.join('')}</basematerials>\n`;
}

function objectXml(
  body: FileBody,
  id: number,
  material: number,
  { unit, segmentsPerTurn }: ThreeMfOptions,
): string {
  const { positions: p, triangles } = bodyMesh(body, segmentsPerTurn);
  const scale = perMetre(unit);
  const lines = [
    `<object id="${id}" type="model" name="${xmlText(body.name)}" pid="${MATERIALS_ID}" pindex="${material}">\n<mesh>\n<vertices>\n`,
  ];
  const at = (i: number) => decimal(scale * p[i]);
  for (let i = 0; i < p.length; i += 3) {
    lines.push(`<vertex x="${at(i)}" y="${at(i + 1)}" z="${at(i + 2)}"/>\n`);
  }
  lines.push('</vertices>\n<triangles>\n');
  for (let i = 0; i < triangles.length; i += 3) {
    const [a, b, c] = triangles.subarray(i, i + 3);
    lines.push(`<triangle v1="${a}" v2="${b}" v3="${c}"/>\n`);
  }
  lines.push('</triangles>\n</mesh>\n</object>\n');
  return lines.join('');
}

/** Rounded at 1e-10 of the unit, without an exponent or needless zeros. */
function decimal(value: number): string {
  const text = value.toFixed(10).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text;
}
