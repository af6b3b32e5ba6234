import { setOC } from 'replicad';
import loadKernel from 'replicad-opencascadejs';
import address from 'replicad-opencascadejs/wasm?url';

type LoadKernel = (options: {
  locateFile(): string;
  print(text: string): void;
  printErr(text: string): void;
}) => Promise<Parameters<typeof setOC>[0]>;

/**
 * Loads Open CASCADE (packages replicad, MIT, and replicad-opencascadejs, LGPL-2.1, both unchanged; the kernel's binary is
 * a file of its own, 23 MB, that can be replaced). Only the worker that writes STEP asks for it.
 */
export async function loadStepKernel(): Promise<void> {
  const load = loadKernel as unknown as LoadKernel;
  const quiet = { print: () => {}, printErr: () => {} };
  const locateFile = () => new URL(address, self.location.href).href;
  setOC(await load({ ...quiet, locateFile }));
}
