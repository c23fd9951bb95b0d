/** How the bars of a lane are drawn. */

/** From the middle of a lane to each of its two rails, in millimetres. */
export const RAIL = 0.32;

/** Every other lane has two fine lines for one broad one: neighbours differ even where the pattern is the same. */
export function isBroadLane(laneIndex: number): boolean {
  return laneIndex % 2 === 0;
}
