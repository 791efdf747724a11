package leat.level;

import leat.numeric.Impossible;

/**
 * What one reading says. It is filled anew by each call of {@link Sender#decode}, so that a long
 * log needs one of them.
 *
 * <p>Source: sheets level-decode.csv and level-plan-decode.csv.
 */
public final class Reading {
  Sender sender;
  double ohm;
  Status status = Status.NO_READING;
  int stepLow = -1;
  int stepHigh = -1;
  double levelLow;
  double levelHigh;
  double volumeLow;
  double volumeHigh;
  double volume;
  double fullShare;

  /** An empty one, no reading. */
  public Reading() {}

  /** What it means. */
  public Status status() {
    return status;
  }

  /** Steps of the sender that was read; null before the first reading. */
  public Staircase staircase() {
    return sender == null ? null : sender.staircase();
  }

  /** Whether there is a number: false for no reading. It may be infinite, for a broken wire. */
  public boolean hasOhm() {
    return status != Status.NO_READING;
  }

  /**
   * Resistance of the sender, the lead taken off, ohm; Infinity for a meter that shows overload.
   *
   * @throws Impossible if there is no reading
   */
  public double ohm() {
    if (!hasOhm()) {
      throw new Impossible("reading", "there is none");
    }
    return ohm;
  }

  /** Whether it has a band of volumes (and of levels, when the tank's shape is known). */
  public boolean hasBand() {
    return status.hasBand();
  }

  /** Whether it has a band of levels. */
  public boolean hasLevels() {
    return status.hasBand() && sender.staircase().hasLevels();
  }

  private double inBand(double value) {
    if (!status.hasBand()) {
      throw new Impossible("reading", "it has no band");
    }
    return value;
  }

  /** Lowest step it may be, from the bottom; -1 without a band. */
  public int stepLow() {
    return status.hasBand() ? stepLow : -1;
  }

  /** Highest step it may be, from the bottom; -1 without a band. */
  public int stepHigh() {
    return status.hasBand() ? stepHigh : -1;
  }

  /** Resistance of the lowest step it may be, ohm. Refused without a band. */
  public double stepLowOhm() {
    return sender.staircase().ohm((int) inBand(stepLow));
  }

  /** Resistance of the highest step it may be, ohm. Refused without a band. */
  public double stepHighOhm() {
    return sender.staircase().ohm((int) inBand(stepHigh));
  }

  /** Lowest level it may be, m. Refused without levels. */
  public double levelLow() {
    return inLevels(levelLow);
  }

  /** Highest level it may be, m. Refused without levels. */
  public double levelHigh() {
    return inLevels(levelHigh);
  }

  private double inLevels(double value) {
    if (!hasLevels()) {
      throw new Impossible("reading", "it has no band of levels");
    }
    return value;
  }

  /** Least volume it may be, m3. Refused without a band. */
  public double volumeLow() {
    return inBand(volumeLow);
  }

  /** Greatest volume it may be, m3. Refused without a band. */
  public double volumeHigh() {
    return inBand(volumeHigh);
  }

  /**
   * Middle of the volumes, m3, which has the least greatest error; not the volume of the middle
   * level. Refused without a band.
   */
  public double volume() {
    return inBand(volume);
  }

  /**
   * How much more than a mark's volume it is about, m3, negative below it: the middle of the
   * volumes less the mark's.
   *
   * @param mark volume at the mark, m3
   */
  public double aboveMark(double mark) {
    return inBand(volume) - mark;
  }

  /**
   * Whether it may be less than a mark's volume: the low end of the band is.
   *
   * @param mark volume at the mark, m3
   */
  public boolean mayBeBelow(double mark) {
    return inBand(volumeLow) < mark;
  }

  /**
   * Whether it is no more than a mark's volume, whatever it is: the high end of the band is not.
   *
   * @param mark volume at the mark, m3
   */
  public boolean isBelow(double mark) {
    return inBand(volumeHigh) <= mark;
  }

  /** Whether the tank may be empty: the band begins at the floor. */
  public boolean reachesFloor() {
    return inBand(volumeLow) == 0;
  }

  /** Whether the tank may be full to the rim: the band ends there. */
  public boolean reachesRim() {
    return inBand(volumeHigh) >= sender.staircase().capacity();
  }

  /** Middle of the volumes over the volume at the full mark, a share; may pass 1. */
  public double fullShare() {
    return inBand(fullShare);
  }
}
