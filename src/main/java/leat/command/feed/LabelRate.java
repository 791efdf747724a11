package leat.command.feed;

import java.util.List;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.cli.Flag;
import leat.plan.Kind;
import leat.plan.Refused;
import leat.plan.Section;
import leat.quantity.Dimension;
import leat.solution.recipes.LabelledBottle;
import leat.solution.tank.FeedParts;
import leat.system.ConcentrateOf;
import leat.system.LabelsOf;

/** The feed of {@code dose} and {@code topup}: a label's rate by flags, or the plan's bottles. */
final class LabelRate {
  static final Flag RATE =
      Flag.of(
          "--rate",
          "RATE",
          Kind.quantity(Dimension.VOLUME_RATIO),
          "5 mL/L",
          "label rate, all bottles together");
  static final Flag RATE_EC =
      Flag.of(
              "--rate-ec",
              "EC",
              Kind.quantity(Dimension.EC),
              "1.9 mS/cm",
              "what that rate adds to pure water")
          .sets("feed.rate_ec");
  static final Flag PARTS =
      Flag.of("--parts", "N", Kind.COUNT, "2", "equal bottles that share the rate");

  /** Amount of one bottle, and its name, for a line of figures. */
  static final Column AMOUNT = Column.of("bottle_mL", "from the bottle", Show.ML);

  private final Call call;
  final FeedParts parts;

  private LabelRate(Call call, FeedParts parts) {
    this.call = call;
    this.parts = parts;
  }

  /**
   * The feed that a call names.
   *
   * @param each whether {@code --rate} is that of each bottle
   */
  static LabelRate of(Call call, boolean each) {
    Section section = call.plan().section("feed");
    Double rate = call.above0("--rate");
    Double count = call.above0("--parts");
    if (rate == null && (count != null || each)) {
      throw call.needs("--rate");
    }
    if (rate == null && !section.has("parts")) {
      throw call.hasPlan() ? section.missing("parts") : call.needs("--rate");
    }
    if (!section.has("rate_ec")) {
      throw call.hasPlan() ? section.missing("rate_ec") : call.needs("--rate-ec");
    }
    if (rate == null) {
      return new LabelRate(call, ConcentrateOf.of(section));
    }
    return typed(call, section, each, rate, count);
  }

  private static LabelRate typed(
      Call call, Section section, boolean each, double rate, Double count) {
    if (each && count == null) {
      throw call.needs("--parts");
    }
    int n = count == null ? 1 : count.intValue();
    double ec = section.need("rate_ec");
    FeedParts parts = each ? FeedParts.each(rate, n, ec) : FeedParts.sharing(rate, n, ec);
    if (!call.has("--rate-ec") && isOfOtherBottles(section, parts)) {
      throw call.needs("--rate-ec");
    }
    return new LabelRate(call, parts);
  }

  /** Whether the plan's rate_ec was said of its own bottles at another rate than the one typed. */
  private static boolean isOfOtherBottles(Section section, FeedParts typed) {
    return ConcentrateOf.isRated(section) && !ConcentrateOf.of(section).ratedAs(typed);
  }

  /** Where a plan feeds by the gram and nothing liquid is named, the way to that is told. */
  static void refuseSalts(Call call) {
    Section feed = call.plan().section("feed");
    boolean liquid = call.has("--rate") || feed.has("parts") || feed.has("rate_ec");
    if (!liquid && !feed.sections("salts").isEmpty()) {
      throw new Refused(MixErrors.noRecipe(call.command, call.again("topup")));
    }
  }

  /** The plan's bottles by their labels; none when a rate was typed or no label is known. */
  List<LabelledBottle> labels() {
    Section feed = call.plan().section("feed");
    return call.has("--rate") || !LabelsOf.isKnown(feed) ? List.of() : LabelsOf.of(feed);
  }

  /** How many bottles. */
  int bottles() {
    return parts.ratesMlPerL().length;
  }

  /** Whether all bottles are poured alike. */
  boolean alike() {
    return parts.alike();
  }

  /** Name of a bottle: the plan's, else its number. */
  String name(int i) {
    return call.has("--rate")
        ? "bottle " + (i + 1)
        : ConcentrateOf.name(call.plan().section("feed"), i);
  }

  /** Columns of unequal bottles; none when one column tells all. */
  Column[] columns() {
    Column[] columns = new Column[alike() ? 0 : bottles()];
    for (int i = 0; i < columns.length; i++) {
      columns[i] = Column.of("part_" + (i + 1) + "_mL", "bottle " + (i + 1), Show.ML);
    }
    return columns;
  }

  /** Fills the column of equal bottles, or those of unequal ones, which stand last in the row. */
  void fill(Row row, Column each, Column[] all, double[] ml) {
    if (alike()) {
      row.set(each, Litres.baseOfMl(ml[0]));
      return;
    }
    for (int i = 0; i < ml.length; i++) {
      row.set(all[all.length - ml.length + i], Litres.baseOfMl(ml[i]));
    }
  }
}
