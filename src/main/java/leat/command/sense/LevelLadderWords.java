package leat.command.sense;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.level.Ladder;
import leat.level.LadderDesign;
import leat.level.Limits;
import leat.quantity.Dimension;
import leat.quantity.NumberText;
import leat.quantity.QuantityReader;
import leat.quantity.Units;

/** A designed ladder in words, and the section to paste. */
final class LevelLadderWords {
  private static final Column STEPS = Column.plain("steps", "steps");
  private static final Column FIRST = Column.of("first_ohm", "lowest", LevelColumns.OHM);
  private static final Column LAST = Column.of("last_ohm", "highest", LevelColumns.OHM);
  private static final Column SERIES = Column.plain("series", "series");
  private static final Column WORST = Column.of("worst_ohm", "worst step off by", Show.OHM);
  private static final Column SEPARATE = Column.of("separate_ohm", "rounded alone", Show.OHM);
  private static final Column RETURN = Column.plain("return_at", "return wire");
  private static final Column OVERLAPS = Column.plain("overlaps", "pairs that read alike");
  private static final Column TOLERANCE = Column.of("tolerance_pct", "resistors", Show.PERCENT);
  private static final Column METER = Column.of("meter_ohm", "meter", Show.OHM);
  private static final Column PITCH = Column.of("greatest_pitch_mm", "reeds apart", Show.MM);
  private static final Column BRIDGED = Column.of("bridged_mm", "reeds bridge", Show.MM);

  private static final Column[] COLUMNS = {
    STEPS, FIRST, LAST, SERIES, WORST, SEPARATE,
    RETURN, OVERLAPS, TOLERANCE, METER, PITCH, BRIDGED
  };

  private static final String[] KEPT = {
    "--empty", "--full", "--range", "--steps", "--series", "--length", "--tolerance", "--reading"
  };

  private final Call call;
  private final LadderDesign design;
  private final Limits limits;
  private final double[] reeds;
  private final String equal;
  private final Double pullIn;
  private final Double dropOut;
  private final Row row;

  LevelLadderWords(Call call, LadderDesign design, Limits limits, double[] reeds, String equal) {
    this.call = call;
    this.design = design;
    this.limits = limits;
    this.reeds = reeds;
    this.equal = equal;
    this.pullIn = call.above0("--pull-in");
    this.dropOut = call.above0("--drop-out");
    this.row = row();
  }

  private Row row() {
    int n = design.node().length;
    return Row.aside(COLUMNS)
        .set(STEPS, n)
        .set(FIRST, design.node()[0])
        .set(LAST, design.node()[n - 1])
        .set(SERIES, design.series().name())
        .set(WORST, design.maxError())
        .set(SEPARATE, design.separateMaxError())
        .set(RETURN, design.returnAt() == Ladder.ReturnAt.BOTTOM ? "bottom" : "top")
        .set(OVERLAPS, design.overlaps(limits))
        .set(TOLERANCE, limits.tolerance())
        .set(METER, limits.reading())
        .set(PITCH, reeds == null ? null : Double.valueOf(Ladder.greatestPitch(reeds)))
        .set(BRIDGED, bridged());
  }

  private Double bridged() {
    return pullIn == null || dropOut == null ? null : LadderDesign.bridges(pullIn, dropOut);
  }

  Answer say(Answer answer, boolean tankKnown) {
    answer.sentence(
        row,
        "{steps} steps from {first_ohm!} to {last_ohm} in {series}: no step is off by more than {worst_ohm}.");
    figures(answer);
    table(answer, tankKnown);
    call.withTaken(answer);
    minds(answer);
    answer.working(
        row,
        WORST,
        "resistor i = wanted(i) - reached(i - 1), the nearest of the series; then least squares of all",
        "{steps} steps from {first_ohm} to {last_ohm}, {series}",
        "one resistor between two reeds, one reed closed at a time",
        "series of IEC 60063");
    return paste(answer);
  }

  private void figures(Answer answer) {
    answer.figure(
        "worst step off by",
        row,
        "{worst_ohm}",
        "the least there is in this series; then least squares");
    answer.figure("rounded one by one", row, "{separate_ohm}", "errors pile up");
    answer.figure(
        "return wire",
        row,
        "at the {return_at}",
        "each resistor between its reed's tap and the next towards it; reed 1 lowest");
  }

  private void table(Answer answer, boolean tankKnown) {
    List<Column> shown = new ArrayList<>();
    shown.add(LevelLadderCommand.REED);
    if (reeds != null) {
      shown.add(LevelLadderCommand.LEVEL);
    }
    if (reeds != null && tankKnown) {
      shown.add(LevelLadderCommand.VOLUME);
    }
    shown.add(LevelLadderCommand.RESISTOR);
    shown.add(LevelLadderCommand.NODE);
    shown.add(LevelLadderCommand.TARGET);
    shown.add(LevelLadderCommand.ERROR);
    answer.table(shown.toArray(new Column[0]));
  }

  private void minds(Answer answer) {
    int overlaps = design.overlaps(limits);
    if (overlaps > 0) {
      answer.mind(
          "overlap",
          row,
          overlaps == 1
              ? "1 pair of neighbours reads alike with resistors of {tolerance_pct} and a meter good to {meter_ohm}: closer resistors, fewer steps or a wider range part them."
              : "{overlaps} pairs of neighbours read alike with resistors of {tolerance_pct} and a meter good to {meter_ohm}: closer resistors, fewer steps or a wider range part them.");
    }
    if (design.looksShort(limits)) {
      answer.mind(
          "looks-short",
          "a step near 0 ohm and a shorted cable look the same; begin at 10 ohm where you can.");
    }
    reach(answer);
  }

  /** Whether one reed closes before the one before it opens. */
  private void reach(Answer answer) {
    if (reeds != null && pullIn != null && dropOut != null) {
      if (LadderDesign.bridges(pullIn, dropOut) < Ladder.greatestPitch(reeds)) {
        answer.mind(
            "open-between",
            row,
            "the reeds are up to {greatest_pitch_mm} apart, but one opens before the next closes over {bridged_mm}: the sender would read open in between.");
      }
    } else if (reeds != null) {
      answer.mind(
          "reach",
          row,
          "reeds up to {greatest_pitch_mm} apart want a magnet whose pull-in and drop-out add up to that, or the sender reads open in between: move the magnet past one reed and measure both.");
    }
  }

  private Answer paste(Answer answer) {
    if (reeds != null) {
      return call.intoPlan(answer, "sender.ladder", ladder());
    }
    String first = call.us() ? " --first 2in" : " --first 45mm";
    String last = call.has("--length") ? "" : call.us() ? " --last 11in" : " --last 280mm";
    return answer.next(
        call.again("level ladder", KEPT) + first + last + "   tells where the reeds go");
  }

  /** The ladder as the plan holds it. */
  private String ladder() {
    StringBuilder text = new StringBuilder("{reeds: ").append(reeds.length);
    if ("litres".equals(equal)) {
      text.append(", levels: [");
      for (int i = 0; i < reeds.length; i++) {
        text.append(i == 0 ? "" : ", ").append(size(reeds[i]));
      }
      text.append(']');
    } else {
      text.append(", first: ").append(size(reeds[0]));
      text.append(", pitch: ").append(size(reeds[1] - reeds[0]));
    }
    text.append(", resistors: [");
    for (int i = 0; i < reeds.length; i++) {
      text.append(i == 0 ? "" : ", ");
      text.append(NumberText.shortest(design.resistor()[i])).append(" ohm");
    }
    magnet(text.append("], return_at: ").append(row.get(RETURN)));
    return text.append('}').toString();
  }

  private void magnet(StringBuilder text) {
    text.append(", pull_in: ").append(width("--pull-in", "8 mm"));
    text.append(", drop_out: ").append(width("--drop-out", "9.5 mm"));
    text.append(", stops: ").append(size(LadderDesign.lowerStop(reeds))).append(" to ");
    text.append(size(LadderDesign.upperStop(reeds)));
  }

  private String width(String flag, String otherwise) {
    if (call.has(flag)) {
      return call.text(flag);
    }
    return call.us() ? size(QuantityReader.read(otherwise, Dimension.LENGTH).value()) : otherwise;
  }

  /** A length as the plan's reader would type it: inches where text has them. */
  private String size(double metres) {
    return call.us() ? NumberText.atMost(Units.INCH.fromBase(metres), 3) + " in" : mm(metres);
  }

  static String mm(double level) {
    return NumberText.atMost(Units.MM.fromBase(level), 1) + " mm";
  }
}
