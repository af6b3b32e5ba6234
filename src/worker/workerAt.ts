interface ScriptPolicy {
  createScriptURL(address: string): string;
}
interface PolicyMaker {
  createPolicy(name: string, rules: ScriptPolicy): ScriptPolicy;
}

const policies = new Map<string, ScriptPolicy | undefined>();

/**
 * A worker at an address that the build gave. The page demands Trusted Types, under which a worker's address is only
 * taken from a policy; each knows its one address.
 */
export function workerAt(name: string, address: string): Worker {
  const maker = (globalThis as { trustedTypes?: PolicyMaker }).trustedTypes;
  if (!policies.has(name)) {
    policies.set(
      name,
      maker?.createPolicy(`stillgrip-${name}-worker`, { createScriptURL: () => address }),
    );
  }
  return new Worker(policies.get(name)?.createScriptURL(address) ?? address, { type: 'module' });
}
