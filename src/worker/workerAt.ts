import { tellIfEnded } from './life';

interface ScriptPolicy {
  createScriptURL(address: string): string;
}
interface PolicyMaker {
  createPolicy(name: string, rules: ScriptPolicy): ScriptPolicy;
}

const policies = new Map<string, ScriptPolicy | undefined>();

/** A worker at an address that the build gave. Where it is ended from outside it has an `error` event (see life.ts). */
export function workerAt(name: string, address: string): Worker {
  const worker = new Worker(scriptAddress(name, address), { type: 'module' });
  tellIfEnded(worker);
  return worker;
}

/**
 * The address of a script as the browser takes it. The page demands Trusted Types, under which such an address is only
 * taken from a policy; each knows its one address, and the content policy (src/index.html) lists their names.
 */
export function scriptAddress(name: string, address: string): string {
  const maker = (globalThis as { trustedTypes?: PolicyMaker }).trustedTypes;
  if (!policies.has(name)) {
    policies.set(
      name,
      maker?.createPolicy(`stillgrip-${name}-worker`, { createScriptURL: () => address }),
    );
  }
  return policies.get(name)?.createScriptURL(address) ?? address;
}
