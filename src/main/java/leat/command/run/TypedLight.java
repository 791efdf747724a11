package leat.command.run;

import leat.cli.Call;
import leat.cli.Command;
import leat.cli.CommandErrors;
import leat.climate.LightMeter;
import leat.plan.Refused;
import leat.quantity.Units;

/**
 * Light that was measured instead of reckoned from a month: the sum of a day in the open, or a lux
 * meter's reading at the plants.
 *
 * @param molM2 light of the day, mol/m2
 * @param ppfd photons by the meter, umol/m2 s; NaN for a day's sum
 */
record TypedLight(double molM2, double ppfd) {
  /** What says where the light comes from, or takes from it; a meter at the plants saw that. */
  private static final String[] OF_THE_SKY = {
    "--month", "--cover", "--transmission", "--shade", "--window"
  };

  /** The light of {@code --light} or {@code --lux}; null when neither is given. */
  static TypedLight of(Command command, Call call) {
    boolean sum = call.has("--light");
    if (!sum && !call.has("--lux")) {
      return null;
    }
    String given = sum ? "--light" : "--lux";
    if (sum && call.has("--lux")) {
      throw new Refused(CommandErrors.notBoth(command, "--light", "--lux"));
    }
    for (int i = 0; i < (sum ? 1 : OF_THE_SKY.length); i++) {
      if (call.has(OF_THE_SKY[i])) {
        throw new Refused(CommandErrors.notBoth(command, given, OF_THE_SKY[i]));
      }
    }
    return sum ? new TypedLight((Double) call.value("--light"), Double.NaN) : metered(call);
  }

  private static TypedLight metered(Call call) {
    Double seconds = call.quantity("--lux-hours");
    if (seconds == null) {
      throw call.needs("--lux-hours");
    }
    String source = call.has("--lux-of") ? call.text("--lux-of") : LightMeter.words()[0];
    double ppfd =
        LightMeter.ppfdUmolM2S((Double) call.value("--lux"), LightMeter.luxPerUmol(source));
    return new TypedLight(LightMeter.molM2(ppfd, Units.H.fromBase(seconds)), ppfd);
  }

  /** Whether a meter read it at the plants. */
  boolean isMetered() {
    return !Double.isNaN(ppfd);
  }
}
