export const SHELL: string;
export const WHOLE: string;
export function chromiumThere(): string;
