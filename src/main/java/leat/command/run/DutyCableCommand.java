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
import leat.energy.Cautions;
import leat.energy.Copper;
import leat.plan.Kind;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.plan.Section;
import leat.quantity.Dimension;
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
      Flag.of("--gauge", "AWG", Kind.NUMBER, "18", "wire gauge in place of --section"),
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
          "temperature of the copper, 20 C otherwise"),
      DutyFlags.inrush(),
      Flag.of(
          "--least-voltage",
          "VOLTAGE",
          DutyFlags.VOLTAGE,
          "9 V",
          "voltage the pump needs to start"),
      Flag.of("--drop", "SHARE", DutyFlags.SHARE, "5 %", "drop that is still good, 5 % otherwise"),
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
        "solid".equals(call.text("--strands"))
            ? Copper.Strands.SOLID_OR_STRANDED
            : Copper.Strands.FLEXIBLE;
    call.value("--strands");
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
    OptionalDouble size = cable.leastSize(strands, warm, leastV, mostDrop);
    Double own = section(call, plan);
    if (own == null && size.isEmpty()) {
      return call.withTaken(none(cable));
    }
    double area = own == null ? size.getAsDouble() : own;
    Cable with = cable.with(area, strands, warm, leastV);
    return answer(call, cable, area, with, size, own != null, least);
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

  private Double section(Call call, Plan plan) {
    Double gauge = call.quantity("--gauge");
    if (gauge != null && call.has("--section")) {
      throw new Refused(CommandErrors.notBoth(this, "--gauge", "--section"));
    }
    if (gauge != null) {
      return Copper.gaugeArea(gauge);
    }
    return plan.section("pump").section("supply").section("cable").maybe("section");
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
      FUSE_FITS
    };
  }

  private static Answer none(CableOf cable) {
    return new Answer(columns())
        .sentence(
            Phrase.of("No cord up to 6 mm2 feeds ")
                .add(cable.pumpTyped())
                .add(" at ")
                .add(cable.supplyTyped())
                .add(" over ")
                .add(cable.lengthTyped())
                .add(": put the supply nearer, or take a higher voltage."))
        .mind("mains", Cautions.MAINS)
        .no();
  }

  private static Double orNull(OptionalDouble value) {
    return value.isPresent() ? Double.valueOf(value.getAsDouble()) : null;
  }

  private Answer answer(
      Call call,
      CableOf cable,
      double area,
      Cable with,
      OptionalDouble size,
      boolean given,
      Double least) {
    Answer answer = new Answer(columns());
    Row row =
        answer
            .row()
            .set(SECTION, area)
            .set(LOOP, with.loopOhm())
            .set(CURRENT, with.currentA())
            .set(DROP, with.dropV())
            .set(DROP_SHARE, with.dropShare())
            .set(PUMP_V, orNull(with.pumpV()))
            .set(PUMP_DROP, orNull(with.pumpDropShare()))
            .set(LOSS, orNull(with.lossW()))
            .set(INRUSH_V, with.pumpVAtInrush())
            .set(LEAST, orNull(size))
            .set(FOR_5, with.areaFor5Pct())
            .set(FUSE, orNull(with.fuseA()))
            .set(CORD, orNull(with.cordLimitA()));
    if (least != null) {
      row.set(STARTS, with.starts());
    }
    if (with.cord() != Cable.Cord.UNKNOWN) {
      row.set(FUSE_FITS, with.cord() == Cable.Cord.PROTECTED);
    }
    answer.sentence(sentence(cable, area, with, given));
    figures(answer, row, with, least);
    working(answer, cable, with);
    call.withTaken(answer);
    verdict(answer, with, size, least);
    answer.mind("mains", Cautions.MAINS);
    return answer;
  }

  private static Phrase sentence(CableOf cable, double area, Cable with, boolean given) {
    Phrase words = Phrase.of(given ? "" : "It takes ").add(area, MM2);
    words.add(" over ").add(cable.lengthTyped());
    if (!with.feeds()) {
      return words.add(
          " cannot feed an electronic pump: as the voltage falls it draws more, and there is no end to it.");
    }
    words
        .add(given ? " loses " : ", which loses ")
        .add(with.worstDropShare(), Show.PERCENT)
        .add(" of ")
        .add(cable.supplyTyped())
        .add(": ");
    switch (with.drop()) {
      case GOOD:
        return words.add("good.");
      case MUCH:
        return words.add("much, the pump gives less.");
      default:
        return words.add("too much.");
    }
  }

  private static void figures(Answer answer, Row row, Cable with, Double least) {
    answer.figure(
        DROP.label(),
        with.dropShare() < 1 ? Answer.phrase(row, DROP) : Phrase.of("all of it"),
        Phrase.of(Math.min(1, with.dropShare()), Show.PERCENT),
        Phrase.of("brushed pump"));
    if (with.feeds()) {
      answer.figure(
          row,
          PUMP_V,
          Phrase.of(with.pumpDropShare().getAsDouble(), Show.PERCENT).add(" lost"),
          Phrase.of("electronic pump"));
      answer.figure(row, LOSS);
    }
    Phrase starts =
        least == null
            ? Phrase.of("does it start at that? --least-voltage")
            : Phrase.of(with.starts() ? "starts" : "does not start, it wants ")
                .add(with.starts() ? Phrase.of() : Phrase.of(least, Show.V));
    answer.figure("at the start", Phrase.of(Math.max(0, with.pumpVAtInrush()), Show.V), starts);
    answer.figure(row, LEAST, Phrase.of("of the usual sizes, flexible from 0.5 mm2"));
    answer.figure(
        row,
        FUSE,
        with.cordLimitA().isPresent()
            ? Phrase.of("the cord carries ").add(with.cordLimitA().getAsDouble(), Show.A.digits(2))
            : Phrase.of("ask the maker what this cord carries"));
  }

  private static void verdict(Answer answer, Cable with, OptionalDouble size, Double least) {
    boolean weak = least != null && !with.starts();
    boolean bare = with.cord() == Cable.Cord.UNPROTECTED;
    if (with.drop() == Cable.Drop.TOO_MUCH || weak || bare) {
      answer.no();
    }
    if (bare) {
      answer.mind(
          "cord-too-thin", "no fuse both holds and protects this cord: take a thicker one.");
    }
    if (with.drop() != Cable.Drop.GOOD && size.isPresent()) {
      answer.next(
          "leat duty cable ... --section \""
              + Phrase.of(size.getAsDouble(), MM2).render(false)
              + "\"");
    }
    answer.mind(
        "fuse-time-lag",
        "the fuse sits at the supply's end, time-lag for the start; it protects the cable, not the pump.");
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
