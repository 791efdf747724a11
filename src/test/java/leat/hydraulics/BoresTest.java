package leat.hydraulics;

import static leat.hydraulics.Cases.L_MIN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import leat.numeric.Impossible;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Sheet hydraulics-bores.md and its rows; how each row is known stands in the sheet. */
class BoresTest {
  static Stream<Row> rows() {
    return Sheet.of("hydraulics-bores.csv").atLeast(93);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void theDataAreTheSheets(Row r) {
    List<Bore> found = new ArrayList<>();
    for (Bore b : Bores.all()) {
      if (b.family().equals(r.text("family")) && b.name().equals(r.text("name"))) {
        found.add(b);
      }
    }
    assertThat(found).as(r.text("name")).hasSize(1);
    Bore b = found.get(0);
    assertThat(b.say()).isEqualTo(r.text("say"));
    assertThat(b.usual()).isEqualTo(r.text("usual").equals("yes"));
    assertThat(b.known()).isEqualTo(r.text("how_known"));
    assertThat(b.source()).isEqualTo(r.text("source"));
    assertThat(b.note()).isEqualTo(r.text("note"));
    same(r, "bore_mm", OptionalDouble.of(b.bore()));
    same(r, "bore_min_mm", b.least());
    same(r, "bore_max_mm", b.greatest());
    same(r, "outside_mm", b.outside());
    same(r, "wall_mm", b.wall());
  }

  private static void same(Row r, String column, OptionalDouble ours) {
    assertThat(ours.isPresent()).as(column).isEqualTo(r.has(column));
    if (ours.isPresent()) {
      assertThat(1000 * ours.getAsDouble()).isCloseTo(r.num(column), withPercentage(1e-12));
    }
  }

  @Test
  void nothingIsThereThatTheSheetHasNot() {
    assertThat(Bores.all()).hasSize(Sheet.of("hydraulics-bores.csv").rows().size());
    int sum = 0;
    for (String family : Bores.families()) {
      assertThat(Bores.about(family)).isNotBlank();
      sum += Bores.family(family, true).size();
    }
    assertThat(sum).isEqualTo(93);
  }

  /** Second route: a pipe's bore from its outside and wall, as the sheet checked them. */
  @Test
  void eachBoreLiesWithinItsLimitsAndInItsPipe() {
    for (Bore b : Bores.all()) {
      assertThat(b.bore()).as(b.name()).isGreaterThanOrEqualTo(b.least().orElse(0));
      assertThat(b.bore()).as(b.name()).isLessThanOrEqualTo(b.greatest().orElse(1));
      assertThat(b.poorest()).isLessThanOrEqualTo(b.bore());
      if (b.outside().isPresent()) {
        double inside = b.outside().getAsDouble() - 2 * b.wall().getAsDouble();
        // mean wall, mean outside and schedule 40's 0.020 in over the least wall: 1 mm at most
        assertThat(b.bore()).as(b.name()).isCloseTo(inside, within(1e-3));
      }
    }
  }

  /** Sheet, "The next bore": its own examples. */
  @ParameterizedTest
  @CsvSource({
    "9.0,10 mm (3/8 in)",
    "10.1,12.5 mm (1/2 in)",
    "12.52,12.5 mm (1/2 in)",
    "13.0,16 mm (5/8 in)",
    "16.0,16 mm (5/8 in)",
    "16.1,19 mm (3/4 in)",
    "19.5,25 mm (1 in)",
    "32,",
  })
  void theNextHoseIsTheSheets(double wantedMm, String say) {
    assertThat(nextHose(wantedMm / 1000).map(Bore::say).orElse(null)).isEqualTo(say);
  }

  @Test
  void theFamilyOfATube() {
    assertThat(Bores.familyOf(0.0125)).isEqualTo("hose");
    assertThat(Bores.familyOf(0.0127)).isEqualTo("inch-tube");
    assertThat(Bores.familyOf(0.0136)).isEqualTo("drip");
    assertThat(Bores.familyOf(0.0137)).isEqualTo("hose");
  }

  /** The narrowest hose that meets a wanted bore. */
  private static Optional<Bore> nextHose(double wanted) {
    return Bores.family(Bores.HOSE, false).stream().filter(b -> b.meets(wanted)).findFirst();
  }

  /** Bore of a tube that holds so much water, m3, in so much length, m. */
  private static double boreOf(double volume, double length) {
    return Math.sqrt(4 * volume / (Math.PI * length));
  }

  /** Sheet, "Measure it": grams of water in a metre. */
  @ParameterizedTest
  @CsvSource({
    "10,78.5",
    "12,113.1",
    "12.5,122.7",
    "12.7,126.7",
    "13,132.7",
    "16,201.1",
    "19,283.5"
  })
  void theWaterInAMetreTellsTheBore(double boreMm, double grams) {
    // a tenth of a gram, the last digit printed, is 0.006 mm at 10 mm
    assertThat(1000 * boreOf(grams * 1e-6, 1)).isCloseTo(boreMm, within(0.006));
  }

  /** Sheet: "the same 12.5 mm hose at 11.9 and 13.5 differs 1.83 times", and two others. */
  @ParameterizedTest
  @CsvSource({"11.9,13.5,1.83", "15.4,16.3,1.31", "15.3,15.8,1.17"})
  void frictionFollowsTheToleranceAsTheSheetSays(double least, double greatest, double times) {
    double flow = 8 * L_MIN;
    double ratio = friction(least, flow) / friction(greatest, flow);
    // D^-4.8 of a smooth tube against Colebrook's own power near Re 1E4
    assertThat(ratio).isCloseTo(times, withPercentage(2));
  }

  private static double friction(double boreMm, double flow) {
    PipeSection s = new PipeSection(1, boreMm / 1000, 1.5e-6, 0);
    return new Line(Liquid.water(20), s).frictionLoss(flow);
  }

  private static final PipeSection SHARED = new PipeSection(0.5, 0.016, 1.5e-6, 2);

  private static Manifold towers(double lift) {
    Line line = new Line(Liquid.water(20), new PipeSection(lift + 0.4, 0.010, 1.5e-6, 2.3));
    Line other = new Line(Liquid.water(20), new PipeSection(1.5, 0.013, 1.5e-6, 2.3));
    return new Manifold(
        new Line(Liquid.water(20), SHARED),
        new Riser(line, lift),
        new Riser(line, lift),
        new Riser(other, 1.2));
  }

  /** Second route: each row's network by Newton. */
  @Property(tries = 20)
  void theTableIsTheSameTowersWithAnotherBore(
      @ForAll @Scale(3) @DoubleRange(min = 0.8, max = 1.9) double lift) {
    Manifold m = towers(lift);
    PumpCurve pump = PumpCurve.parabola(2.8, 30 * L_MIN);
    List<Bore> hoses = Bores.family(Bores.HOSE, false);
    List<BoreTable.Towers> table = BoreTable.towers(pump, m, new int[] {0, 1}, 0, hoses);
    assertThat(table).hasSize(hoses.size());
    double present = new WholeNetwork(2.8, 30 * L_MIN, SHARED, m).flows()[0];
    double before = 0;
    for (BoreTable.Towers row : table) {
      Line line = m.riser(0).line();
      Line wider = line.with(0, line.section(0).withBore(row.bore().bore()));
      Manifold changed = m.with(0, new Riser(wider, lift)).with(1, new Riser(wider, lift));
      double[] newton = new WholeNetwork(2.8, 30 * L_MIN, SHARED, changed).flows();
      assertThat(row.flow() / L_MIN).isCloseTo(newton[0] / L_MIN, within(1e-6));
      assertThat(row.flows().flow(1)).isCloseTo(row.flow(), withPercentage(1e-9));
      assertThat(row.flow()).isGreaterThanOrEqualTo(before);
      assertThat(row.poorestFlow().getAsDouble()).isLessThanOrEqualTo(row.flow());
      double area = Math.PI / 4 * row.bore().bore() * row.bore().bore();
      assertThat(row.speed()).isCloseTo(row.flow() / area, within(1e-12));
      if (present > 0) {
        assertThat(row.gain().getAsDouble()).isCloseTo(newton[0] / present - 1, within(1e-4));
        assertThat(row.pays()).isEqualTo(row.gain().getAsDouble() >= 0.01);
      } else {
        assertThat(row.pays()).isEqualTo(row.flow() > 0);
      }
      before = row.flow();
    }
  }

  @Test
  void theHeadsOfATubeAtAFlow() {
    Line line = new Line(Liquid.water(20), new PipeSection(2.2, 0.013, 1.5e-6, 2.5));
    Riser riser = new Riser(line, 1.9);
    List<BoreTable.Head> table =
        BoreTable.heads(null, 0, riser, 0, 8 * L_MIN, Bores.family("vinyl", false));
    double before = Double.POSITIVE_INFINITY;
    for (BoreTable.Head row : table) {
      assertThat(row.passes()).isTrue();
      assertThat(row.poorestHead()).isEmpty();
      assertThat(row.loss().totalHead()).isLessThan(before);
      before = row.loss().totalHead();
    }
    // 60 L/min through 5 mm would run at 51 m/s, through 8 mm at 20 m/s
    List<BoreTable.Head> fast =
        BoreTable.heads(null, 0, riser, 0, 60 * L_MIN, Bores.family("silicone", true));
    for (BoreTable.Head row : fast) {
      double speed = 60 * L_MIN / (Math.PI / 4 * row.bore().bore() * row.bore().bore());
      assertThat(row.passes()).as(row.bore().name()).isEqualTo(speed <= 30);
      assertThat(row.poorestHead().isPresent() || !row.passes() || row.bore().bore() < 0.009)
          .isTrue();
    }
    // hydraulics.md section 4, worked: 8 L/min in 13 mm takes 2.281405 m
    List<Bore> thirteen = List.of(Bores.family("pvc-u", true).get(0));
    HeadLoss worked = BoreTable.heads(null, 0, riser, 0, 8 * L_MIN, thirteen).get(0).loss();
    assertThat(worked.totalHead()).isCloseTo(2.281405, within(5e-7));
    assertThatThrownBy(() -> BoreTable.heads(null, 0, riser, 0, 0, thirteen))
        .isInstanceOf(Impossible.class);
    assertThatThrownBy(
            () -> BoreTable.towers(null, new Manifold(null, riser), new int[0], 0, thirteen))
        .isInstanceOf(Impossible.class);
  }

  private static BoreTable.Towers row(double boreMm, double flow, OptionalDouble gain) {
    Bore hose = nextHose(boreMm / 1000).get();
    return new BoreTable.Towers(hose, null, flow, OptionalDouble.empty(), 1, gain);
  }

  /** Another tube is worth it from one per cent more on (practice), or where nothing flowed. */
  @Test
  void aTubePaysFromOnePerCentOn() {
    assertThat(row(10, 1e-4, OptionalDouble.of(0.01)).pays()).isTrue();
    assertThat(row(10, 1e-4, OptionalDouble.of(0.0099)).pays()).isFalse();
    assertThat(row(10, 1e-4, OptionalDouble.empty()).pays()).isTrue();
    assertThat(row(10, 0, OptionalDouble.empty()).pays()).isFalse();
  }

  @Test
  void theFirstTubeThatIsWideEnoughAndTheNextThatPays() {
    List<BoreTable.Towers> rows =
        List.of(
            row(10, 1e-4, OptionalDouble.of(0)),
            row(12.5, 2e-4, OptionalDouble.of(0.005)),
            row(16, 3e-4, OptionalDouble.of(0.5)),
            row(19, 4e-4, OptionalDouble.of(0.6)));
    assertThat(BoreTable.narrowestFor(rows, 2e-4).get().bore().say()).startsWith("12.5 mm");
    assertThat(BoreTable.narrowestFor(rows, 2.01e-4).get().bore().say()).startsWith("16 mm");
    assertThat(BoreTable.narrowestFor(rows, 4.01e-4)).isEmpty();
    assertThat(BoreTable.nextThatPays(rows, 0.010).get().bore().say()).startsWith("16 mm");
    assertThat(BoreTable.nextThatPays(rows, 0.016).get().bore().say()).startsWith("19 mm");
    // 15.96 mm is the 16 mm hose itself
    assertThat(BoreTable.nextThatPays(rows, 0.01596).get().bore().say()).startsWith("19 mm");
    assertThat(BoreTable.nextThatPays(rows, 0.01594).get().bore().say()).startsWith("16 mm");
    assertThat(BoreTable.nextThatPays(rows, 0.019)).isEmpty();
  }

  /**
   * 8 L/min run at 1.70 m/s in 10 mm (too fast), 1.09 in 12.5 mm. There 2.2 m and K 2.5 take about
   * 0.45 m: less than half of a climb of 1.9 m, more than half of one of 0.5 m, which wants 16 mm
   * (about 0.14 m).
   */
  @Test
  void theNarrowestThatSuitsIsNeitherFastNorHeavy() {
    Line line = new Line(Liquid.water(20), new PipeSection(2.2, 0.013, 1.5e-6, 2.5));
    List<Bore> hoses = Bores.family(Bores.HOSE, false);
    assertThat(suits(line, 1.9, 8, hoses)).startsWith("12.5 mm");
    assertThat(suits(line, 0.5, 8, hoses)).startsWith("16 mm");
    assertThat(suits(line, 1.9, 8, hoses.subList(0, 1))).isNull();
  }

  private static String suits(Line line, double lift, double litres, List<Bore> hoses) {
    List<BoreTable.Head> rows =
        BoreTable.heads(null, 0, new Riser(line, lift), 0, litres * L_MIN, hoses);
    return BoreTable.narrowestThatSuits(rows).map(h -> h.bore().say()).orElse(null);
  }

  /** Behind a common pipe the poorest tube's head holds that pipe's loss as well. */
  @Test
  void thePoorestHeadHoldsTheCommonPipe() {
    Line line = new Line(Liquid.water(20), new PipeSection(2.2, 0.013, 1.5e-6, 2.5));
    Line common = new Line(Liquid.water(20), SHARED);
    Riser riser = new Riser(line, 1.9);
    List<Bore> hoses = Bores.family(Bores.HOSE, false);
    for (int i = 0; i < hoses.size(); i++) {
      double alone =
          BoreTable.heads(null, 0, riser, 0, 6 * L_MIN, hoses).get(i).poorestHead().getAsDouble();
      double behind =
          BoreTable.heads(common, 12 * L_MIN, riser, 0, 6 * L_MIN, hoses)
              .get(i)
              .poorestHead()
              .getAsDouble();
      assertThat(behind - alone).isCloseTo(common.loss(12 * L_MIN), within(1e-12));
      double narrow = hoses.get(i).least().getAsDouble();
      assertThat(alone)
          .isCloseTo(
              1.9 + line.with(0, line.section(0).withBore(narrow)).loss(6 * L_MIN), within(1e-12));
    }
  }

  @Test
  void familiesAreKnownByName() {
    assertThat(Bores.about("pex")).isEqualTo("PEX, outside x wall");
    assertThatThrownBy(() -> Bores.about("garden")).isInstanceOf(Impossible.class);
    // 61.35 g in half a metre are 122.7 in a whole one
    assertThat(1000 * boreOf(61.35e-6, 0.5)).isCloseTo(12.5, within(0.006));
  }
}
