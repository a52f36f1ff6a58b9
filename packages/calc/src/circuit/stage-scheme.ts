/**
 * Two-stage singly diagonal scheme (Alexander, SIAM J. Numer. Anal. 14, 1977): second order, L-stable, both stages with
 * the same companion coefficient, last stage equal to the step's result.
 */
export const STAGE_SHARE = 1 - Math.SQRT1_2;

/** Weight of the first stage's move in what the second stage starts from. */
export const EXTRAPOLATE = (1 - STAGE_SHARE) / STAGE_SHARE;
