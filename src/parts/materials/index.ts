export { findMaterial, MATERIALS } from './table';
