package leat.level;

import java.util.Arrays;
import leat.numeric.Impossible;

/**
 * A tank with bodies standing in it: net volume = gross volume less what the submerged parts take;
 * the level is solved on the net volume.
 *
 * <p>A strapping table measured with the pump in place is net already: give it no bodies.
 *
 * <p>Source: geometry. Check values: sheet level-tank-volume.csv.
 */
public final class Displaced implements Tank {
  /** Points between two kinks at which the free section is looked at. */
  private static final int LOOKS = 64;

  private final Tank shell;
  private final Body[] bodies;
  private final double[] breaks;
  private final double capacity;
  private final double lowestVolume;

  /**
   * @param shell the empty tank
   * @param bodies what stands in it; above each other or side by side
   * @throws Impossible if they leave no free section at some level
   */
  public Displaced(Tank shell, Body... bodies) {
    this.shell = shell;
    this.bodies = bodies.clone();
    this.breaks = breaks();
    checkFreeSection();
    this.capacity = volume(shell.height());
    this.lowestVolume = volume(shell.lowestLevel());
    Impossible.ifNegative("displaced", lowestVolume);
  }

  private double[] breaks() {
    double low = shell.lowestLevel();
    double high = shell.height();
    double[] kinks = shell.kinks();
    double[] all = Arrays.copyOf(kinks, kinks.length + 2 + 2 * bodies.length);
    int n = kinks.length;
    all[n++] = low;
    all[n++] = high;
    for (Body b : bodies) {
      all[n++] = Math.min(Math.max(b.from(), low), high);
      all[n++] = Math.min(Math.max(b.to(), low), high);
    }
    Arrays.sort(all);
    return all;
  }

  private void checkFreeSection() {
    for (int k = 0; k + 1 < breaks.length; k++) {
      double low = breaks[k];
      double high = breaks[k + 1];
      double taken = takenArea((low + high) / 2);
      for (int i = 0; taken > 0 && high > low && i <= LOOKS; i++) {
        double z = low + (high - low) * i / LOOKS;
        if (!(shell.area(z) > taken)) {
          throw new Impossible("displaced", "the bodies fill the tank's whole section");
        }
      }
    }
  }

  private double takenArea(double level) {
    double sum = 0;
    for (Body b : bodies) {
      if (level >= b.from() && level < b.to()) {
        sum += b.area();
      }
    }
    return sum;
  }

  @Override
  public double height() {
    return shell.height();
  }

  @Override
  public double lowestLevel() {
    return shell.lowestLevel();
  }

  @Override
  public double lowestVolume() {
    return lowestVolume;
  }

  @Override
  public double capacity() {
    return capacity;
  }

  @Override
  public double volume(double level) {
    double z = shell.checkedLevel(level);
    double net = shell.volume(z);
    for (Body b : bodies) {
      net -= b.taken(z);
    }
    return net;
  }

  @Override
  public double area(double level) {
    double z = shell.checkedLevel(level);
    return shell.area(z) - takenArea(Math.min(z, Math.nextDown(height())));
  }

  @Override
  public double level(double volume) {
    double v = checkedVolume(volume);
    int k = 0;
    while (k < breaks.length - 2 && volume(breaks[k + 1]) < v) {
      k++;
    }
    return Inverse.level(this, v, breaks[k], breaks[k + 1]);
  }
}
