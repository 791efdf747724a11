package leat.command.feed;

import leat.cli.Call;
import leat.cli.CommandErrors;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.plan.Section;
import leat.plan.Taken;
import leat.solution.tank.Cans;
import leat.solution.tank.Topup;
import leat.solution.tank.TopupAsk;
import leat.solution.tank.TopupSaltsAsk;
import leat.system.ConcentrateOf;

/** What a call of {@code topup} asks, apart from what is in the tank: marks, water, feed, rain. */
final class TopupAsked {
  final Call call;
  final EcTyped typed;

  /** The feed by its label, or null when salts are weighed. */
  final LabelRate feed;

  /** The full mark, m3. */
  final double full;

  /** EC aimed at, mS/cm. */
  final double target;

  /** EC of the water poured, mS/cm. */
  final double waterEc;

  private final double rainL;
  private final double rainEc;

  TopupAsked(Call call) {
    this.call = call;
    this.typed = new EcTyped(call);
    boolean salts = bySalts(call);
    if (salts) {
      refuseLabel(call);
    } else {
      LabelRate.refuseSalts(call);
    }
    if (!salts && call.has("--makes")) {
      throw call.needs("--weigh");
    }
    this.feed = salts ? null : LabelRate.of(call, false);
    this.full = FullMark.of(call);
    this.target = typed.target("--target");
    this.waterEc = typed.water("--water-ec", target);
    this.rainL = rain(call);
    this.rainEc = rainL > 0 ? rainEc(call.plan(), call.taken()) : Topup.RAIN_EC_MS_CM;
  }

  /** Refuses flags of a label beside salts that are weighed: they would be left out. */
  private static void refuseLabel(Call call) {
    String[] label = {"--rate", "--rate-ec", "--parts"};
    for (int i = 0; i < label.length; i++) {
      if (call.has(label[i]) && call.has("--weigh")) {
        throw new Refused(CommandErrors.notBoth(call.command, label[i], "--weigh"));
      }
      if (call.has(label[i])) {
        throw call.needs("--rate");
      }
    }
  }

  /** Whether the feed is weighed: by flags, or in a plan that has a recipe and no bottles. */
  static boolean bySalts(Call call) {
    return call.has("--weigh") || !call.has("--rate") && isWeighed(call.plan());
  }

  /** Whether a plan has a recipe that is weighed and no bottles. */
  static boolean isWeighed(Plan plan) {
    Section feed = plan.section("feed");
    return !ConcentrateOf.isKnown(feed) && feed.section("stock").named("grams").size() > 0;
  }

  private static double rain(Call call) {
    Double litres = call.from0("--rain");
    Double depth = call.from0("--rainfall");
    if (litres != null && depth != null) {
      throw new Refused(CommandErrors.notBoth(call.command, "--rain", "--rainfall"));
    }
    if (depth != null) {
      Section tank = call.plan().section("tank");
      double share = tank.get("rain_share", call.taken());
      return Topup.rainfallL(tank.need("rain_area"), depth, share);
    }
    return litres == null ? 0 : Litres.of(litres);
  }

  private static double rainEc(Plan plan, Taken taken) {
    Section rain = plan.section("rain");
    Double ec = rain.maybe("ec");
    if (ec == null) {
      taken.note(
          "rain of "
              + leat.answer.Phrase.of(Topup.RAIN_EC_MS_CM, leat.answer.Show.MS_CM).render(false));
    }
    return ec == null ? Topup.RAIN_EC_MS_CM : ec;
  }

  /** The EC of the tank; an empty one needs none. */
  double ec(Held held) {
    Double ec = typed.reading("--ec");
    if (ec == null && held.log != null && held.log.ec() != null) {
      return held.log.ec();
    }
    if (ec == null && held.high > 0) {
      throw call.needs("--ec");
    }
    return ec == null ? 0 : typed.believed("--ec", ec, target);
  }

  /** The question for one volume, m3. */
  TopupAsk ask(double volume, double ec) {
    return new TopupAsk(
        Litres.of(volume),
        ec,
        Litres.of(full),
        target,
        waterEc,
        feed.parts.together(),
        rainL,
        rainEc);
  }

  /** The same for feed that is weighed; the recipe adds so much to pure water. */
  TopupSaltsAsk saltsAsk(double ec, double gainMsCm) {
    return new TopupSaltsAsk(ec, Litres.of(full), target, waterEc, gainMsCm, rainL, rainEc);
  }

  /** Whether rain was told. */
  boolean rained() {
    return rainL > 0 || call.has("--rain") || call.has("--rainfall");
  }

  /** The water in cans; null when no can is known or no water is poured. */
  Cans cans(Double waterL) {
    Double can = call.plan().section("season").maybe("catch");
    return can == null || waterL == null ? null : Cans.of(waterL, Litres.of(can));
  }
}
