package leat.energy;

import leat.numeric.Impossible;

/**
 * A battery for a power cut: what the tower draws from it and how large it must be.
 *
 * <pre>mean W = P s/efficiency + inverter idle + controller + coil's part
 * J = mean W x time</pre>
 *
 * <p>The capacity is that of the mean current; pulses at {@link #pumpOnA} lie between, so it is the
 * hopeful side.
 *
 * <p>Source: energy balance; W. Peukert's law; sheet energy.md section 5, check values
 * energy-backup.csv.
 *
 * @param seconds length of the power cut, s
 * @param pumpMeanW the pump's part of the mean draw on the battery's side, W
 * @param inverterIdleW the inverter's own part, W
 * @param othersMeanW controller and coil, W
 * @param meanW all, W
 * @param meanA mean current, A
 * @param pumpOnA current of everything while the pump runs, A
 * @param energyJ energy, J
 * @param countedJ the same counted cycle by cycle when the cut opens with a start, J
 * @param capacityC capacity needed, no Peukert effect, C (1 Ah is 3600 C)
 * @param capacityPeukertC capacity needed with it, C: the one to buy
 * @param dayJ energy of a whole day, J
 */
public record Backup(
    double seconds,
    double pumpMeanW,
    double inverterIdleW,
    double othersMeanW,
    double meanW,
    double meanA,
    double pumpOnA,
    double energyJ,
    double countedJ,
    double capacityC,
    double capacityPeukertC,
    double dayJ) {
  /** The parts of the draw. */
  public enum Part {
    PUMP,
    INVERTER_IDLE,
    CONTROLLER_AND_COIL
  }

  /**
   * The draw of a power cut and the battery for it.
   *
   * @param timing run and rest during the cut
   * @param draw what draws power
   * @param inverter what stands between, {@link Inverter#none} for a direct-current pump
   * @param battery the battery's figures
   * @param seconds length of the cut, s, above 0
   * @return the draw and the capacity
   * @throws Impossible if the time is not above 0 or nothing draws
   */
  public static Backup of(
      Timing timing, Draw draw, Inverter inverter, Battery battery, double seconds) {
    Accepted.someTime("hours", seconds);
    double share = timing.share();
    double pumpOnW = draw.pumpW() / inverter.efficiency();
    double others = draw.othersW(share);
    double mean = pumpOnW * share + inverter.idleW() + others;
    double counted = timing.countedRunS(seconds);
    return new Backup(
        seconds,
        pumpOnW * share,
        inverter.idleW(),
        others,
        mean,
        mean / battery.volts(),
        (pumpOnW + inverter.idleW() + draw.othersW(1)) / battery.volts(),
        mean * seconds,
        pumpOnW * counted + (inverter.idleW() + draw.othersW(counted / seconds)) * seconds,
        battery.capacityC(mean, seconds),
        battery.capacityPeukertC(mean, seconds),
        mean * Accepted.DAY_S);
  }

  /** The largest part of the draw. */
  public Part largestPart() {
    if (pumpMeanW >= inverterIdleW && pumpMeanW >= othersMeanW) {
      return Part.PUMP;
    }
    return inverterIdleW >= othersMeanW ? Part.INVERTER_IDLE : Part.CONTROLLER_AND_COIL;
  }
}
