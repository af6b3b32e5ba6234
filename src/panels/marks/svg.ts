export { ElementPool, setShown, setText, setValues, svgElement } from '../../ui/drawn/svg';
