package leat.hydraulics;

/** Which friction factor a line uses. */
public enum FrictionModel {
  /** {@link FrictionFactor}: laminar, straight line between Re 2000 and 4000, Colebrook. */
  BLEND,
  /** {@link Churchill}: one formula for all regimes, for comparison. */
  CHURCHILL
}
