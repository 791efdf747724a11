package leat.command.feed;

import leat.answer.Column;
import leat.answer.Row;
import leat.cli.Call;
import leat.cli.RowStream;
import leat.quantity.Unreadable;
import leat.solution.conductivity.Compensation;
import leat.solution.conductivity.EcReading;
import leat.solution.conductivity.MeterCheck;

/** The part of {@code leat ec} that answers row by row. */
final class EcRows extends RowStream.Function {
  private final String unit;
  private final EcText text;
  private final Compensation by;
  private final Double at;
  private final double slope;
  private final boolean repeats;

  EcRows(Call call) {
    String column = call.text("--column");
    unit = call.has("--unit") ? (String) call.value("--unit") : EcText.unitOf(column);
    text = EcText.of(EcCommand.scale(call, call.plan()), unit);
    by = EcCommand.compensation(call);
    at = call.quantity("--at");
    slope = EcCommand.slope(call.plan());
    repeats = EcCommand.EC.key().equals(column) && !call.has("--prefix");
  }

  @Override
  public Column[] columns() {
    Column[] all = {
      EcCommand.EC,
      EcCommand.EC25,
      EcCommand.PPM500,
      EcCommand.PPM640,
      EcCommand.PPM700,
      EcCommand.STATUS
    };
    return repeats ? java.util.Arrays.copyOfRange(all, 1, all.length) : all;
  }

  @Override
  public Column status() {
    return EcCommand.STATUS;
  }

  @Override
  public void answer(String cell, Row into) {
    double read;
    try {
      read = text.read(cell);
    } catch (Unreadable e) {
      throw unit == null && "no-unit".equals(e.code()) ? EcErrors.noUnitInRows(e) : e;
    }
    EcReading reading = EcCommand.reading(MeterCheck.corrected(read, slope), at, by);
    if (!repeats) {
      into.set(EcCommand.EC, reading.ec());
    }
    EcCommand.fill(into, reading);
    into.set(EcCommand.STATUS, "ok");
  }
}
