package leat.command.build;

import java.util.List;
import java.util.Optional;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.command.MeasuredWords;
import leat.hydraulics.Bore;
import leat.hydraulics.BoreTable;
import leat.hydraulics.Bores;
import leat.hydraulics.PipeSection;
import leat.system.SetValves;
import leat.system.Waterway;

/** Answers {@code leat pump --bores}: the flow with each tube that one can buy. */
final class PumpBores {
  static final Column TUBE = Column.plain("tube", "tube");
  static final Column FAMILY = Column.plain("family", "kind");
  static final Column BORE = Column.of("bore_mm", "bore", Show.MM);
  static final Column TOWER = Column.plain("tower", "tower");
  static final Column FLOW = Column.of("flow_L_min", "flow", Show.L_MIN);
  static final Column POOREST = Column.of("poorest_flow_L_min", "with a tight one", Show.L_MIN);
  static final Column VELOCITY = Column.of("velocity_m_s", "speed", Show.M_S);
  static final Column MARGIN = Column.of("margin_m", "margin", Show.M);
  static final Column GAIN = Column.of("gain_pct", "more than now", Show.PERCENT);
  static final Column PRESENT = Column.plain("present", "yours");
  static final Column PRESENT_BORE = Column.of("present_bore_mm", "bore now", Show.MM);
  static final Column PAYS = Column.plain("pays", "pays");
  static final Column WANTED = Column.of("wanted_L_min", "wanted", Show.L_MIN);
  static final Column NOW = Column.of("present_flow_L_min", "now", Show.L_MIN);
  private static final Column[] COLUMNS = {
    TUBE,
    FAMILY,
    BORE,
    TOWER,
    FLOW,
    POOREST,
    VELOCITY,
    MARGIN,
    GAIN,
    PRESENT,
    PAYS,
    WANTED,
    NOW,
    PRESENT_BORE,
    TubePrices.PRICE
  };

  private final Call call;
  private final Waterway way;
  private final int tower;

  PumpBores(Call call, Waterway way, int tower) {
    this.call = call;
    this.way = way;
    this.tower = tower;
  }

  Answer answer(double level) {
    int[] risers = way.risersOf(tower);
    int section = way.tower(tower).riser().size() - 1;
    PipeSection present = way.tower(tower).riser().section(section);
    String family = call.has("--family") ? call.text("--family") : Bores.familyOf(present.bore());
    List<Bore> bores = Bores.family(family, false);
    List<BoreTable.Towers> rows =
        BoreTable.towers(way.curve(), way.manifold(level), risers, section, bores);
    Answer answer = new Answer(COLUMNS).asList();
    TubePrices prices = new TubePrices(call.plan());
    fill(answer, rows, prices, present.bore(), way.flows(level).flow(risers[0]));
    say(answer, rows, present.bore());
    prices.table(answer, bores, TUBE, FLOW, POOREST, VELOCITY, GAIN);
    prices.mind(answer);
    valvesFirst(answer);
    minds(answer, family);
    working(answer);
    MeasuredWords.say(answer, way.believed(), "");
    next(call.withTaken(answer));
    return answer;
  }

  private void fill(
      Answer answer, List<BoreTable.Towers> rows, TubePrices prices, double present, double now) {
    for (int i = 0; i < rows.size(); i++) {
      fill(answer.row(), rows.get(i), present, now);
      answer.row(i).set(TubePrices.PRICE, prices.of(rows.get(i).bore()));
    }
  }

  private void next(Answer answer) {
    answer.next(
        call.again("pump", "--family", "--tower", "--level", "--lift", "--length")
            + (call.hasPlan()
                ? " --set \"towers[" + tower + "].riser.bore=...\"   to see the whole tower with it"
                : " --bore ...   to see the whole tower with it"));
  }

  private static void working(Answer answer) {
    answer.working(
        answer.row(0),
        FLOW,
        "share x H(Q) = lift + losses(Q), losses with this bore",
        "bore {bore_mm}, speed {velocity_m_s}",
        "tubes of 4 to 50 mm",
        "energy balance; losses of leat head; inside sizes of the tubes' standards");
  }

  private void fill(Row row, BoreTable.Towers tube, double present, double now) {
    row.set(TUBE, tube.bore().name())
        .set(FAMILY, tube.bore().family())
        .set(BORE, tube.bore().bore())
        .set(TOWER, way.name(tower))
        .set(FLOW, tube.flow())
        .set(POOREST, PumpCommand.orNull(tube.poorestFlow()))
        .set(VELOCITY, tube.speed())
        .set(MARGIN, tube.flows().margin(way.risersOf(tower)[0]))
        .set(GAIN, PumpCommand.orNull(tube.gain()))
        .set(PRESENT, Bores.same(tube.bore(), present))
        .set(PAYS, tube.pays())
        .set(WANTED, PumpCommand.orNull(way.wanted(tower)))
        .set(NOW, now)
        .set(PRESENT_BORE, present);
  }

  private void say(Answer answer, List<BoreTable.Towers> rows, double present) {
    sentence(answer, rows, present);
    answer.figure("now", answer.row(0), "{present_bore_mm}", "{present_flow_L_min}");
  }

  private void sentence(Answer answer, List<BoreTable.Towers> rows, double present) {
    if (way.wanted(tower).isPresent()) {
      enough(answer, rows, way.wanted(tower).getAsDouble());
      return;
    }
    Optional<BoreTable.Towers> next = BoreTable.nextThatPays(rows, present);
    Row row = answer.row(next.isPresent() ? rows.indexOf(next.get()) : 0);
    answer.sentence(
        row,
        next.isPresent()
            ? "The next wider tube that pays is {tube}: {flow_L_min} in place of {present_flow_L_min}."
            : "No wider tube of this kind pays: the flow is {present_flow_L_min} now.");
  }

  private static void enough(Answer answer, List<BoreTable.Towers> rows, double wanted) {
    Optional<BoreTable.Towers> enough = BoreTable.narrowestFor(rows, wanted);
    Row row = answer.row(enough.isPresent() ? rows.indexOf(enough.get()) : rows.size() - 1);
    answer.sentence(
        row,
        enough.isPresent()
            ? "The narrowest tube that gives {tower} the {wanted_L_min} it wants is {tube}: {flow_L_min} with the valve open."
            : "No tube of this kind gives {tower} the {wanted_L_min} it wants; the widest, {tube}, gives {flow_L_min}.");
    if (enough.isEmpty()) {
      answer.no();
    }
  }

  /** A tower that has what it wants once the valves of the others are set needs no other tube. */
  private void valvesFirst(Answer answer) {
    if (way.wanted(tower).isEmpty() || call.has("--level") || call.has("--lift")) {
      return;
    }
    int riser = way.risersOf(tower)[0];
    boolean wantsMore = way.flows(way.low()).flow(riser) < way.wanted(tower).getAsDouble();
    if (wantsMore && SetValves.of(way).holdsBack(riser)) {
      answer.mind(
          "valves-first",
          answer.row(0),
          "{tower}: once the valves of the others are set it has {wanted_L_min} in the tube that is there: leat pump --balance wanted.");
    }
  }

  private static void minds(Answer answer, String family) {
    answer.mind(
        "fittings-too",
        "new fittings of the new size are taken; a wide tube on the old narrow barbs gains less.");
    answer.mind("family", family + ": " + Bores.about(family) + ".");
  }
}
