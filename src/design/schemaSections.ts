import * as z from 'zod/mini';
import { MAX_ID, MAX_NAME } from './limits';
import { number, numbers, schemaTexts } from './schemaNumbers';
import { SECTIONS } from './sections';
import { MAX_POLAR_TEXT } from './sections/air';
import { DRAG_ROW_LIMITS, MAX_DRAG_ROWS } from './sections/friction';
import type { SectionField, SectionSet } from './sections/section';
import { MAX_FIELD_NAME, MAX_OWN_TOLERANCES, PLUS_MINUS_LIMITS } from './sections/tolerance';

function fieldSchema(field: SectionField): z.ZodMiniType {
  const text = { title: field.label, description: field.help };
  switch (field.type) {
    case 'number':
      return number(field).register(schemaTexts, text);
    case 'switch':
      return z.boolean().register(schemaTexts, text);
    default:
      return z.enum(field.options as readonly [string, ...string[]]).register(schemaTexts, text);
  }
}

/** A section: its fields, and what stands beside them. */
function sectionSchema(set: SectionSet, more: Readonly<Record<string, z.ZodMiniType>> = {}) {
  const fields = Object.entries(set).map(([name, field]) => {
    const required = field.type === 'number' && field.required;
    return [name, required ? fieldSchema(field) : z.optional(fieldSchema(field))] as const;
  });
  return z.strictObject({ ...Object.fromEntries(fields), ...more });
}

const dragTable = z
  .array(z.strictObject(numbers(DRAG_ROW_LIMITS, ['travelMm', 'forceN'])))
  .check(z.maxLength(MAX_DRAG_ROWS))
  .register(schemaTexts, {
    description: 'Drag of the linkage measured at rest at the slider, travel ascending.',
  });

const polarFile = z
  .strictObject({
    name: z.string().check(z.maxLength(MAX_NAME)),
    text: z.string().check(z.maxLength(MAX_POLAR_TEXT)),
  })
  .register(schemaTexts, {
    description: "Coefficients of the blade's section, as the file had them.",
  });

const ownTolerances = z
  .array(
    z.strictObject({
      part: z.string().check(z.minLength(1), z.maxLength(MAX_ID)),
      field: z.string().check(z.minLength(1), z.maxLength(MAX_FIELD_NAME)),
      component: z.optional(z.int().check(z.gte(0), z.lte(2))),
      plusMinus: number(PLUS_MINUS_LIMITS),
    }),
  )
  .check(z.maxLength(MAX_OWN_TOLERANCES))
  .register(schemaTexts, {
    description: "Tolerances of single numbers of parts, each in the number's own unit.",
  });

/** The document's sections; all but the rotor may be left out. */
export const sectionSchemas = {
  rotor: sectionSchema(SECTIONS.rotor),
  counted: z.optional(sectionSchema(SECTIONS.counted)),
  control: z.optional(sectionSchema(SECTIONS.control)),
  friction: z.optional(sectionSchema(SECTIONS.friction, { drag: z.optional(dragTable) })),
  air: z.optional(sectionSchema(SECTIONS.air, { polar: z.optional(polarFile) })),
  bladeBolt: z.optional(sectionSchema(SECTIONS.bladeBolt)),
  clearance: z.optional(sectionSchema(SECTIONS.clearance)),
  tolerance: z.optional(sectionSchema(SECTIONS.tolerance, { own: z.optional(ownTolerances) })),
};
