package leat.command.run;

import java.util.OptionalDouble;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.energy.Cable;
import leat.energy.Copper;

/** The columns of {@code leat duty cable} and how its results fill them. */
final class CableColumns {
  private static final Show MM2 = Show.MM2.digits(2);
  static final Column SECTION = Column.of("section_mm2", "section", MM2);
  static final Column LOOP = Column.of("loop_ohm", "out and back", Show.OHM);
  static final Column CURRENT = Column.of("current_A", "current", Show.A);
  static final Column DROP = Column.of("drop_V", "lost on the way", Show.V);
  static final Column DROP_SHARE = Column.of("drop_pct", "drop", Show.PERCENT);
  static final Column PUMP_V = Column.of("pump_V", "at the pump", Show.V);
  static final Column PUMP_DROP =
      Column.of("electronic_drop_pct", "drop, electronic pump", Show.PERCENT);
  static final Column LOSS = Column.of("cable_loss_W", "heat in the cable", Show.W.digits(2));
  static final Column INRUSH_V = Column.of("start_pump_V", "at the start", Show.V);
  static final Column STARTS = Column.plain("starts", "starts");
  static final Column LEAST = Column.of("least_section_mm2", "least section", MM2);
  static final Column FOR_5 = Column.of("section_for_5pct_mm2", "for 5 % by copper", MM2);
  static final Column FUSE = Column.of("fuse_A", "fuse", Show.A.digits(2));
  static final Column CORD = Column.of("cord_carries_A", "cord carries", Show.A.digits(2));
  static final Column FUSE_FITS = Column.plain("fuse_protects_cord", "fuse protects the cord");
  static final Column GAUGE = Column.plain("gauge_awg", "wire gauge");
  static final Column LEAST_GAUGE = Column.plain("least_gauge_awg", "least gauge");
  static final Column VERDICT = Column.plain("verdict", "verdict");

  static final Column[] COLUMNS = {
    SECTION,
    LOOP,
    CURRENT,
    DROP,
    DROP_SHARE,
    PUMP_V,
    PUMP_DROP,
    LOSS,
    INRUSH_V,
    STARTS,
    LEAST,
    FOR_5,
    FUSE,
    CORD,
    FUSE_FITS,
    GAUGE,
    LEAST_GAUGE,
    VERDICT
  };

  private CableColumns() {}

  /**
   * A cable and the least ones that would do.
   *
   * @param gauge as typed, or null for a section
   */
  static void fill(Row row, CableAsked asked, double area, Double gauge) {
    Cable with = asked.with(area);
    row.set(SECTION, area).set(VERDICT, with.verdict().word());
    losses(row, with);
    fuse(row, with);
    row.set(LEAST, DutyRows.orNull(asked.leastSize())).set(FOR_5, with.areaFor5Pct());
    OptionalDouble same = gauge == null ? Copper.gaugeFor(area) : OptionalDouble.of(gauge);
    gauge(row, GAUGE, same);
    gauge(row, LEAST_GAUGE, asked.leastGauge());
    if (asked.leastV != null) {
      row.set(STARTS, with.starts());
    }
  }

  private static void losses(Row row, Cable with) {
    row.set(LOOP, with.loopOhm())
        .set(CURRENT, with.currentA())
        .set(DROP, with.lostV())
        .set(DROP_SHARE, with.lostShare())
        .set(PUMP_V, DutyRows.orNull(with.pumpV()))
        .set(PUMP_DROP, DutyRows.orNull(with.pumpDropShare()))
        .set(LOSS, DutyRows.orNull(with.lossW()))
        .set(INRUSH_V, with.startV());
  }

  private static void fuse(Row row, Cable with) {
    row.set(FUSE, DutyRows.orNull(with.fuseA())).set(CORD, DutyRows.orNull(with.cordLimitA()));
    if (with.cord() != Cable.Cord.UNKNOWN) {
      row.set(FUSE_FITS, with.cord() == Cable.Cord.PROTECTED);
    }
  }

  private static void gauge(Row row, Column column, OptionalDouble gauge) {
    if (gauge.isPresent()) {
      row.set(column, (int) gauge.getAsDouble());
    }
  }
}
