declare module 'occt-import-js' {
  interface KernelResult {
    readonly success: boolean;
    readonly meshes: readonly {
      readonly attributes: { readonly position: { readonly array: readonly number[] } };
      readonly index: { readonly array: readonly number[] };
    }[];
  }
  interface Kernel {
    ReadStepFile(
      content: Uint8Array,
      parameters: Readonly<Record<string, string | number>> | null,
    ): KernelResult;
  }
  export interface KernelOptions {
    locateFile?: (name: string) => string;
    print?: (text: string) => void;
    printErr?: (text: string) => void;
  }
  export default function loadKernel(options: KernelOptions): Promise<Kernel>;
}
