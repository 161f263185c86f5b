/** What datapackage.json should be. */
export function describeTables(): string
