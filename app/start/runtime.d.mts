export declare const reasonAgainstDesktop: () => string | undefined
export declare const installed: (top: string) => string | undefined
