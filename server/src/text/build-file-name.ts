/** Which names and folders hold build files. Touches no disk. */

export const isBuildFileName = (name: string): boolean => /\.dryfit\.ya?ml$/i.test(name);

/** Folders that hold nothing of the builder's. */
export const isPassedOver = (name: string): boolean => name.startsWith('.') || name === 'node_modules';
