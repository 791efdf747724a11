package leat.command.feed;

import leat.answer.Column;
import leat.answer.Row;
import leat.cli.Call;
import leat.cli.CommandErrors;
import leat.cli.RowStream;
import leat.command.sense.PouredPairs;
import leat.command.sense.SenderReading;
import leat.plan.Refused;
import leat.plan.Section;
import leat.quantity.Dimension;
import leat.quantity.QuantityReader;
import leat.quantity.Unit;
import leat.solution.tank.Topup;
import leat.solution.tank.TopupBand;

/**
 * {@code leat topup --column}: one top-up a row. The end of the column's name says what it holds:
 * {@code _L} litres (with {@code --ec}), an EC's unit such as {@code _mS_cm} or {@code ppm} what
 * the meter reads (with {@code --volume}); every other one what the plan's sender reads.
 */
final class TopupRows extends RowStream.Function {
  private enum Holds {
    LITRES,
    EC,
    SENDER
  }

  private static final Column[] COLUMNS = {
    TopupColumns.DRAIN,
    TopupColumns.WATER,
    TopupColumns.FEED,
    TopupColumns.FINAL_VOLUME,
    TopupColumns.FINAL_EC,
    TopupColumns.DRAIN_LOW,
    TopupColumns.DRAIN_HIGH,
    TopupColumns.WATER_LOW,
    TopupColumns.WATER_HIGH,
    TopupColumns.FEED_LOW,
    TopupColumns.FEED_HIGH,
    TopupColumns.STATUS
  };

  private final TopupAsked asked;

  /** The recipe of a feed that is weighed; null for one with a label. */
  private final WeighedRecipe recipe;

  private final Column[] columns;
  private final Holds holds;
  private final String ecUnit;

  /** The unit that the column's name ends in; null when it holds no volume. */
  private final Unit unit;

  private final SenderReading sender;
  private final double ec;
  private final Held held;

  /** What the tank holds to the rim, m3; null where its shape is not known. */
  private final Double capacity;

  private TopupRows(Call call) {
    asked = new TopupAsked(call);
    recipe = asked.feed == null ? WeighedRecipe.of(call) : null;
    columns = recipe == null ? COLUMNS : TopupSaltColumns.ofRows(recipe);
    String column = call.text("--column");
    ecUnit = column.equalsIgnoreCase("ec") ? "mS/cm" : EcText.unitOf(column);
    unit = PouredPairs.volumeUnit(column);
    holds = unit != null ? Holds.LITRES : ecUnit != null ? Holds.EC : Holds.SENDER;
    refuseBoth(call);
    refuseOther(call, column);
    sender = holds == Holds.SENDER ? Held.sender(call) : null;
    held = holds == Holds.EC ? Held.of(call) : null;
    capacity = holds == Holds.LITRES ? Held.capacity(call) : null;
    if (holds != Holds.EC && !call.has("--ec")) {
      throw call.needs("--ec");
    }
    Double typed = holds == Holds.EC ? null : asked.typed.reading("--ec");
    ec = typed == null ? 0 : asked.typed.believed("--ec", typed, asked.target);
  }

  static TopupRows of(Call call) {
    return new TopupRows(call);
  }

  /** Refuses a column that no sender reads: one in mm, or one where the plan has no sender. */
  private void refuseOther(Call call, String column) {
    Section plans = call.plan().section("sender");
    boolean sends = plans.has("steps") || plans.has("edges");
    if (holds == Holds.SENDER && (PouredPairs.isLength(column) || call.hasPlan() && !sends)) {
      throw new Refused(MixErrors.noSuchRows(column));
    }
  }

  private void refuseBoth(Call call) {
    String[] others =
        holds == Holds.EC ? new String[] {"--ec"} : new String[] {"--volume", "--reading", "--log"};
    for (int i = 0; i < others.length; i++) {
      if (call.has(others[i])) {
        throw new Refused(CommandErrors.notBoth(call.command, others[i], "--column"));
      }
    }
  }

  @Override
  public Column[] columns() {
    return columns;
  }

  @Override
  public Column status() {
    return TopupColumns.STATUS;
  }

  @Override
  public void answer(String cell, Row into) {
    if (holds == Holds.EC) {
      fill(into, held, asked.typed.cell(cell, ecUnit));
      return;
    }
    Held one = holds == Holds.LITRES ? Held.of(volume(cell)) : Held.of(sender.of(cell));
    if (one.isUnknown()) {
      into.set(TopupColumns.STATUS, one.status());
      return;
    }
    fill(into, one, ec);
  }

  private double volume(String cell) {
    double volume =
        endsInDigit(cell)
            ? QuantityReader.read(cell, unit).value()
            : QuantityReader.read(cell, Dimension.VOLUME).value();
    if (capacity != null && volume > capacity) {
      throw MixErrors.rowOverTheRim(cell, capacity, asked.call.us());
    }
    return volume;
  }

  private static boolean endsInDigit(String cell) {
    return !cell.isEmpty() && Character.isDigit(cell.charAt(cell.length() - 1));
  }

  private void fill(Row row, Held one, double read) {
    if (recipe != null) {
      new TopupBySalts(asked, one, read, recipe).fill(row, columns);
      return;
    }
    TopupBand band =
        TopupBand.solve(asked.ask(one.middle, read), Litres.of(one.low), Litres.of(one.high));
    Topup.Answer middle = band.middle();
    row.set(TopupColumns.STATUS, middle.status().word)
        .set(TopupColumns.DRAIN, Litres.base(middle.drainL()))
        .set(TopupColumns.WATER, Litres.base(middle.waterL()))
        .set(TopupColumns.FEED, Litres.baseOfMl(middle.concentrateMl()))
        .set(TopupColumns.FINAL_VOLUME, Litres.base(middle.finalVolumeL()))
        .set(TopupColumns.FINAL_EC, middle.finalEcMsCm())
        .set(TopupColumns.DRAIN_LOW, Litres.base(band.drainLowL()))
        .set(TopupColumns.DRAIN_HIGH, Litres.base(band.drainHighL()))
        .set(TopupColumns.WATER_LOW, Litres.base(band.waterLowL()))
        .set(TopupColumns.WATER_HIGH, Litres.base(band.waterHighL()))
        .set(TopupColumns.FEED_LOW, Litres.baseOfMl(band.concentrateLowMl()))
        .set(TopupColumns.FEED_HIGH, Litres.baseOfMl(band.concentrateHighMl()));
  }
}
