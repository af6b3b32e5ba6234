// oxlint-disable-next-line import/default -- made by the build
import address from './worker.ts?worker&url';

interface ScriptPolicy {
  createScriptURL(address: string): string;
}
interface PolicyMaker {
  createPolicy(name: string, rules: ScriptPolicy): ScriptPolicy;
}

let policy: ScriptPolicy | undefined;

/**
 * Starts the worker. The page demands Trusted Types, under which a worker's address is only taken from a policy; this
 * one knows the one address that the build gave.
 */
export function startMeshWorker(): Worker {
  const maker = (globalThis as { trustedTypes?: PolicyMaker }).trustedTypes;
  policy ??= maker?.createPolicy('stillgrip-mesh-worker', { createScriptURL: () => address });
  return new Worker(policy?.createScriptURL(address) ?? address, { type: 'module' });
}
