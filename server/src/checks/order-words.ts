/** Words of orders that several checks use. Decides nothing. */
export const shopsOf = (count: number): string => (count === 1 ? 'one shop' : `${count} shops`);
