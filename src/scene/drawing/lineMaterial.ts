import { ShaderMaterial, Vector2 } from 'three';
import type { LineKind } from './lineBoard';

/**
 * Segments of a width in pixels with round ends. A corner's `position.y` is -1 and 0 at the start (beyond it, on it), 1 and 2
 * at the end, its `position.x` the side.
 */
const VERTEX = /* glsl */ `
uniform vec2 resolution;
attribute vec3 segmentStart;
attribute vec3 segmentEnd;
attribute vec4 segmentColour;
attribute float segmentWidth;
varying vec4 lineColour;
varying vec2 cap;

// Where a segment that goes through the plane of the eye is cut off: just before it.
vec4 cutShort(vec4 seen, vec4 behind) {
  float near = -0.5 * projectionMatrix[3][2] / projectionMatrix[2][2];
  return mix(seen, behind, (near - seen.z) / (behind.z - seen.z));
}

void main() {
  vec4 start = viewMatrix * vec4(segmentStart, 1.0);
  vec4 end = viewMatrix * vec4(segmentEnd, 1.0);
  if (start.z < 0.0 && end.z >= 0.0) end = cutShort(start, end);
  else if (end.z < 0.0 && start.z >= 0.0) start = cutShort(end, start);
  vec4 clipStart = projectionMatrix * start;
  vec4 clipEnd = projectionMatrix * end;
  float aspect = resolution.x / resolution.y;
  vec2 way = clipEnd.xy / clipEnd.w - clipStart.xy / clipStart.w;
  way.x *= aspect;
  way = normalize(way);
  vec2 aside = vec2(way.y, -way.x);
  if (position.x < 0.0) aside = -aside;
  if (position.y < 0.0) aside -= way;
  else if (position.y > 1.0) aside += way;
  aside.x /= aspect;
  vec4 clip = position.y < 0.5 ? clipStart : clipEnd;
  clip.xy += aside * segmentWidth / resolution.y * clip.w;
  gl_Position = clip;
  lineColour = segmentColour;
  cap = vec2(position.x, position.y < 0.5 ? min(0.0, position.y) : max(0.0, position.y - 1.0));
}
`;

const FRAGMENT = /* glsl */ `
varying vec4 lineColour;
varying vec2 cap;

void main() {
  if (dot(cap, cap) > 1.0 && cap.y != 0.0) discard;
  gl_FragColor = lineColour;
  #include <tonemapping_fragment>
  #include <colorspace_fragment>
}
`;

export function lineMaterial(kind: LineKind) {
  const uniforms = { resolution: { value: new Vector2(1, 1) } };
  const material = new ShaderMaterial({
    vertexShader: VERTEX,
    fragmentShader: FRAGMENT,
    uniforms,
    transparent: kind !== 'solid',
    depthWrite: kind === 'solid',
    depthTest: kind !== 'over',
  });
  return Object.assign(material, { uniforms });
}
