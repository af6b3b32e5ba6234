import { setOC } from 'replicad';
import loadKernel from 'replicad-opencascadejs';
import address from 'replicad-opencascadejs/wasm?url';
import { NO_KERNEL } from './stepTypes';

type LoadKernel = (options: {
  locateFile(): string;
  print(text: string): void;
  printErr(text: string): void;
}) => Promise<Parameters<typeof setOC>[0]>;

/**
 * Loads Open CASCADE (packages replicad, MIT, and replicad-opencascadejs, LGPL-2.1, both unchanged; the kernel's binary is
 * a file of its own, 23 MB, that can be replaced). Only the worker that writes STEP asks for it. Throws `NO_KERNEL` where
 * its binary cannot be fetched: that its loader wraps in words of its own.
 */
export async function loadStepKernel(): Promise<void> {
  const load = loadKernel as unknown as LoadKernel;
  const quiet = { print: () => {}, printErr: () => {} };
  const binary = new URL(address, self.location.href).href;
  await fetch(binary).then(
    (answer) => {
      if (!answer.ok) throw new Error(NO_KERNEL);
      return answer.body?.cancel();
    },
    () => {
      throw new Error(NO_KERNEL);
    },
  );
  setOC(await load({ ...quiet, locateFile: () => binary }));
}
