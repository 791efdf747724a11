package leat.command.run;

import java.util.OptionalDouble;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.answer.Working;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.CommandErrors;
import leat.cli.Flag;
import leat.energy.Cable;
import leat.energy.Copper;
import leat.plan.Kind;
import leat.plan.KindReader;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.plan.Section;
import leat.quantity.Dimension;
import leat.quantity.NumberText;
import leat.system.CableOf;

/** {@code leat duty cable}: voltage lost on the way to a low-voltage pump. */
public final class DutyCableCommand extends Command {
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

  private static final Column SUPPLY = Column.plain("supply", "supply");
  private static final Column LENGTH = Column.plain("length", "length");
  private static final Column POWER = Column.plain("power", "power");
  private static final Column WIRE = Column.plain("wire", "wire");
  private static final Column WORST = Column.of("worst_drop_pct", "drop", Show.PERCENT);
  private static final Column WANTED_V = Column.of("least_voltage_V", "it wants", Show.V);

  @Override
  public String name() {
    return "duty cable";
  }

  @Override
  public Flag[] flags() {
    return new Flag[] {
      DutyFlags.dc(),
      DutyFlags.power(),
      Flag.of(
              "--length",
              "LENGTH",
              Kind.quantity(Dimension.LENGTH),
              "14 m",
              "length of the cable, one way")
          .sets("pump.supply.cable.length"),
      Flag.of(
              "--section",
              "AREA",
              Kind.quantity(Dimension.AREA),
              "1.5 mm2",
              "copper section of one core; the least that will do otherwise")
          .sets("pump.supply.cable.section"),
      Flag.of("--gauge", "AWG", Kind.TEXT, "18 AWG", "wire gauge in place of --section"),
      Flag.of(
          "--strands",
          "WORD",
          Kind.choice("flexible", "solid"),
          "flexible",
          "flexible cord, or solid and stranded wire"),
      Flag.of(
          "--temperature",
          "TEMP",
          Kind.quantity(Dimension.TEMPERATURE),
          "40 C",
          "temperature of the copper (default 20 C)"),
      DutyFlags.inrush(),
      Flag.of(
          "--least-voltage",
          "VOLTAGE",
          DutyFlags.VOLTAGE,
          "9 V",
          "voltage the pump needs to start"),
      Flag.of("--drop", "SHARE", DutyFlags.SHARE, "5 %", "drop that is still good (default 5 %)"),
    };
  }

  @Override
  public Answer answer(Call call) {
    Plan plan = call.plan();
    if (!call.hasPlan()) {
      needed(call, plan);
    }
    CableOf cable = new CableOf(plan);
    Copper.Strands strands =
        "solid".equals(call.value("--strands"))
            ? Copper.Strands.SOLID_OR_STRANDED
            : Copper.Strands.FLEXIBLE;
    if (!call.has("--strands")) {
      plan.taken().note("flexible cord");
    }
    Double celsius = call.quantity("--temperature");
    if (celsius == null) {
      plan.taken().note("copper 20 C");
    }
    double warm = celsius == null ? CableOf.USUAL_CELSIUS : celsius;
    Double least = call.above0("--least-voltage");
    double leastV = least == null ? 0 : least;
    Double good = call.above0("--drop");
    double mostDrop = good == null ? Cable.GOOD_DROP : good;
    Double gauge = gauge(call);
    OptionalDouble size = cable.leastSize(strands, warm, leastV, mostDrop);
    OptionalDouble leastGauge = cable.leastGauge(warm, leastV, mostDrop);
    Double own = gauge == null ? section(plan) : Double.valueOf(Copper.gaugeArea(gauge));
    if (own == null && size.isEmpty()) {
      return call.withTaken(none(cable));
    }
    double area = own == null ? size.getAsDouble() : own;
    Answer answer = new Answer(columns());
    Cable with = cable.with(area, strands, warm, leastV);
    Row row =
        row(answer, with, area, size, leastGauge, least)
            .with(said(cable, area, gauge, with, least));
    if (gauge != null) {
      answer.row(0).set(GAUGE, (int) (double) gauge);
    }
    call.withTaken(answer);
    say(answer, row, with, own != null, least);
    next(call, answer, with, gauge != null, size, leastGauge);
    working(answer, cable, with);
    return with.verdict().passes() ? answer : answer.no();
  }

  private void needed(Call call, Plan plan) {
    Section supply = plan.section("pump").section("supply");
    if (!supply.has("dc")) {
      throw call.needs("--dc");
    }
    if (!plan.section("pump").has("power")) {
      throw call.needs("--power");
    }
    if (!supply.section("cable").has("length")) {
      throw call.needs("--length");
    }
  }

  private static Double section(Plan plan) {
    return plan.section("pump").section("supply").section("cable").maybe("section");
  }

  /** A wire gauge, with or without the word AWG before or behind it; null when none is given. */
  private Double gauge(Call call) {
    String typed = call.text("--gauge");
    if (typed == null) {
      return null;
    }
    if (call.has("--section")) {
      throw new Refused(CommandErrors.notBoth(this, "--gauge", "--section"));
    }
    String number = typed.strip();
    if (number.regionMatches(true, 0, "AWG", 0, 3)) {
      number = number.substring(3);
    } else if (number.regionMatches(true, number.length() - 3, "AWG", 0, 3)) {
      number = number.substring(0, number.length() - 3);
    }
    return (Double) KindReader.read(Kind.NUMBER, "--gauge", number.strip());
  }

  private static Column[] columns() {
    return new Column[] {
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
  }

  private static Answer none(CableOf cable) {
    Row row =
        Row.aside(POWER, SUPPLY, LENGTH)
            .set(POWER, cable.pumpTyped())
            .set(SUPPLY, cable.supplyTyped())
            .set(LENGTH, cable.lengthTyped());
    return new Answer(columns())
        .sentence(
            row,
            "No cord up to 6 mm2 feeds {power} at {supply} over {length}: put the supply nearer, or take a higher voltage.")
        .no();
  }

  private static Double orNull(OptionalDouble value) {
    return value.isPresent() ? Double.valueOf(value.getAsDouble()) : null;
  }

  private static Row row(
      Answer answer,
      Cable with,
      double area,
      OptionalDouble size,
      OptionalDouble leastGauge,
      Double least) {
    Row row =
        answer
            .row()
            .set(SECTION, area)
            .set(LOOP, with.loopOhm())
            .set(CURRENT, with.currentA())
            .set(DROP, with.lostV())
            .set(DROP_SHARE, with.lostShare())
            .set(PUMP_V, orNull(with.pumpV()))
            .set(PUMP_DROP, orNull(with.pumpDropShare()))
            .set(LOSS, orNull(with.lossW()))
            .set(INRUSH_V, with.startV())
            .set(LEAST, orNull(size))
            .set(FOR_5, with.areaFor5Pct())
            .set(FUSE, orNull(with.fuseA()))
            .set(CORD, orNull(with.cordLimitA()))
            .set(VERDICT, with.verdict().word());
    if (leastGauge.isPresent()) {
      row.set(LEAST_GAUGE, (int) leastGauge.getAsDouble());
    }
    OptionalDouble same = Copper.gaugeFor(area);
    if (same.isPresent()) {
      row.set(GAUGE, (int) same.getAsDouble());
    }
    if (least != null) {
      row.set(STARTS, with.starts());
    }
    if (with.cord() != Cable.Cord.UNKNOWN) {
      row.set(FUSE_FITS, with.cord() == Cable.Cord.PROTECTED);
    }
    return row;
  }

  private static Row said(CableOf cable, double area, Double gauge, Cable with, Double least) {
    return Row.aside(SUPPLY, LENGTH, WIRE, WORST, WANTED_V)
        .set(SUPPLY, cable.supplyTyped())
        .set(LENGTH, cable.lengthTyped())
        .set(WIRE, gauge == null ? mm2(area) : NumberText.shortest(gauge) + " AWG")
        .set(WORST, with.feeds() ? with.worstDropShare() : 1)
        .set(WANTED_V, least);
  }

  private static String mm2(double area) {
    return Answer.filled(Row.aside(SECTION).set(SECTION, area), "{section_mm2}").render(false);
  }

  private static void say(Answer answer, Row row, Cable with, boolean given, Double least) {
    String wire = given ? "{wire} over {length} " : "Take {wire}: over {length} it ";
    answer.sentence(row, wire + verdict(with.verdict()));
    figures(answer, row, with, least);
    if (with.cord() == Cable.Cord.UNPROTECTED) {
      answer.mind(
          "cord-too-thin", "no fuse both holds and protects this cord: take a thicker one.");
    }
    answer.mind(
        "fuse-time-lag",
        "the fuse sits at the supply's end, time-lag for the start; it protects the cable, not the pump.");
  }

  /** The one verdict, as the end of the sentence. */
  private static String verdict(Cable.Verdict verdict) {
    switch (verdict) {
      case CANNOT_FEED:
        return "cannot feed an electronic pump: as the voltage falls it draws more, and there is no end to it.";
      case DOES_NOT_START:
        return "leaves {start_pump_V} at the start, and the pump wants {least_voltage_V}: it does not start.";
      case CORD_TOO_THIN:
        return "loses {worst_drop_pct} of {supply}, and is too thin for the fuse of {fuse_A} that the pump needs.";
      case TOO_MUCH:
        return "loses {worst_drop_pct} of {supply}: too much.";
      case MUCH:
        return "loses {worst_drop_pct} of {supply}: much, the pump gives less.";
      default:
        return "loses {worst_drop_pct} of {supply}: good.";
    }
  }

  private static void figures(Answer answer, Row row, Cable with, Double least) {
    answer.figure(
        DROP.label(),
        row,
        with.dropShare() < 1 ? "{drop_V}" : "all of it",
        "{drop_pct}",
        "brushed pump");
    if (with.feeds()) {
      answer.figure(row, PUMP_V, "{electronic_drop_pct} lost", "electronic pump");
      answer.figure(LOSS.label(), row, "{cable_loss_W}");
    }
    answer.figure("at the start", row, "{start_pump_V}", starts(with, least));
    least(answer, row);
    answer.figure(
        row,
        FUSE,
        with.cordLimitA().isPresent()
            ? "the cord carries {cord_carries_A}"
            : "ask the maker what this cord carries");
  }

  private static void least(Answer answer, Row row) {
    boolean section = row.get(LEAST) != null;
    if (section && row.get(LEAST_GAUGE) != null) {
      answer.figure(row, LEAST, "or {least_gauge_awg} AWG, of the usual sizes");
    } else if (section) {
      answer.figure(row, LEAST, "of the usual sizes");
    } else {
      answer.figure(LEAST.label(), row, "none up to 6 mm2 will do");
    }
  }

  private static String starts(Cable with, Double least) {
    if (least == null) {
      return "does it start at that? --least-voltage";
    }
    return with.starts() ? "starts" : "does not start, it wants {least_voltage_V}";
  }

  /** The least wire that will do, in the terms that were typed. */
  private static void next(
      Call call,
      Answer answer,
      Cable with,
      boolean gauge,
      OptionalDouble size,
      OptionalDouble awg) {
    if (with.verdict() == Cable.Verdict.GOOD || (gauge ? awg : size).isEmpty()) {
      return;
    }
    String line =
        call.again(
            "duty cable",
            "--dc",
            "--power",
            "--length",
            "--strands",
            "--temperature",
            "--inrush",
            "--least-voltage",
            "--drop");
    answer.next(
        gauge
            ? line + " --gauge \"" + (int) awg.getAsDouble() + " AWG\"   the least that will do"
            : line + " --section \"" + mm2(size.getAsDouble()) + "\"   the least that will do");
  }

  private static void working(Answer answer, CableOf cable, Cable with) {
    answer.working(
        Working.of(
            "drop, constant current",
            "drop = I R, I = P/U, R = 2 L r (1 + 0.00393 (T - 20))",
            Phrase.of("I = ")
                .add(with.currentA(), Show.A)
                .add(", R = ")
                .add(with.loopOhm(), Show.OHM),
            with.dropV(),
            Show.V.digits(4),
            "sections of IEC 60228, 0.5 to 6 mm2; others by resistivity",
            "IEC 60228 maxima at 20 C; Ohm's law"));
    answer.working(
        Working.of(
            "fuse",
            "next blade size at or above 1.25 I",
            Phrase.of("U = ").add(cable.supplyV(), Show.V),
            with.fuseA().orElse(0),
            Show.A.digits(2),
            "1 to 30 A",
            "common practice"));
  }
}
