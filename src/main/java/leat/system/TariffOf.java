package leat.system;

import java.util.List;
import leat.energy.Tariff;
import leat.energy.Window;
import leat.plan.Plan;
import leat.plan.Section;
import leat.quantity.Dimension;
import leat.quantity.QuantityReader;
import leat.quantity.Units;

/** The price of electricity of a plan, in its one currency. */
public final class TariffOf {
  private final Tariff tariff;
  private final boolean priced;
  private final boolean standing;
  private final String currency;

  private TariffOf(Tariff tariff, boolean priced, boolean standing, String currency) {
    this.tariff = tariff;
    this.priced = priced;
    this.standing = standing;
    this.currency = currency;
  }

  /**
   * The tariff; without any price a free one that is not {@link #isPriced}.
   *
   * @param plan the plan
   * @param standingShare share of the standing charge that the tower bears, 0 to 1
   */
  public static TariffOf of(Plan plan, double standingShare) {
    Section section = plan.section("tariff");
    List<Section> bands = section.sections("bands");
    if (!section.has("price") && bands.isEmpty() && !section.has("standing")) {
      return new TariffOf(Tariff.flat(0), false, false, plan.root().text("currency"));
    }
    Window[] windows = new Window[bands.size() + 1];
    double[] prices = new double[windows.length];
    windows[0] = Window.always();
    prices[0] = perJ(section.need("price"));
    String currency = plan.root().text("currency");
    currency = same(section, "price", Dimension.MONEY_PER_ENERGY, currency);
    currency = same(section, "standing", Dimension.MONEY_PER_TIME, currency);
    for (int i = 0; i < bands.size(); i++) {
      windows[i + 1] = WindowOf.of(bands.get(i));
      prices[i + 1] = perJ(bands.get(i).need("price"));
      currency = same(bands.get(i), "price", Dimension.MONEY_PER_ENERGY, currency);
    }
    Double standing = section.maybe("standing");
    Tariff tariff = new Tariff(windows, prices, standing == null ? 0 : standing, standingShare);
    if (windows.length > 1) {
      WindowOf.refuseNever(tariff.windows(), bands, 0, "price");
    }
    return new TariffOf(tariff, true, standing != null, currency);
  }

  private static double perJ(double perKwh) {
    return perKwh / Units.KWH.toBase(1);
  }

  private static String same(Section section, String key, Dimension dimension, String before) {
    String typed = section.typed(key);
    if (typed == null) {
      return before;
    }
    String own = QuantityReader.read(typed, dimension).currency();
    return before == null ? own : before;
  }

  /** Prices and standing charge. */
  public Tariff tariff() {
    return tariff;
  }

  /** Whether a price is known. */
  public boolean isPriced() {
    return priced;
  }

  /** Whether a standing charge is known. */
  public boolean hasStanding() {
    return standing;
  }

  /** Code of the currency, or null. */
  public String currency() {
    return currency;
  }

  /** Price {@code i} by kWh, money. */
  public double perKwh(int i) {
    return tariff.pricePerJ(i) * Units.KWH.toBase(1);
  }
}
