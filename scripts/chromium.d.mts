export declare function chromiumPath(): string | null;
export declare const chromiumFlags: string[];
