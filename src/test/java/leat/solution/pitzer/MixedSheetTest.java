package leat.solution.pitzer;

import static leat.solution.pitzer.Species.COUNT;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import leat.numeric.Roots;
import leat.solution.Salts;
import leat.solution.stock.Stock;
import leat.solution.stock.StockSalt;
import leat.solution.stock.StockSalts;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every row of solution-mixed.csv, each with its own tolerance. */
class MixedSheetTest {
  private static Stream<Row> rows(int atLeast, String... kinds) {
    return Sheet.of("solution-mixed.csv")
        .where(r -> List.of(kinds).contains(r.text("kind")))
        .atLeast(atLeast);
  }

  /** The kinds below are all kinds of the sheet: no row goes untested. */
  static Stream<Row> models() {
    return rows(34, "aphi", "J", "gamma", "gamma-published", "gamma-ratio", "aw");
  }

  static Stream<Row> constants() {
    return rows(20, "lnK");
  }

  static Stream<Row> bottles() {
    return rows(46, "water", "index", "first-look", "step");
  }

  static Stream<Row> verdicts() {
    return rows(21, "verdict");
  }

  static Stream<Row> fallouts() {
    return rows(13, "fallout");
  }

  static Stream<Row> strengths() {
    return rows(6, "strength");
  }

  static Stream<Row> published() {
    return rows(23, "published-index", "published-worst", "published-supersaturated");
  }

  static Stream<Row> mixedSolubilities() {
    return rows(8, "mixed-solubility");
  }

  @org.junit.jupiter.api.Test
  void noRowIsLeftOut() {
    long all =
        Stream.of(
                models(),
                constants(),
                bottles(),
                verdicts(),
                fallouts(),
                strengths(),
                published(),
                mixedSolubilities())
            .mapToLong(Stream::count)
            .sum();
    assertThat(all).isEqualTo(Sheet.of("solution-mixed.csv").rows().size());
    assertThat(all).isEqualTo(172);
  }

  private static Map<String, String> inputs(Row r) {
    Map<String, String> inputs = new TreeMap<>();
    for (String part : r.text("inputs").split(";")) {
      int is = part.indexOf('=');
      inputs.put(part.substring(0, is), part.substring(is + 1));
    }
    return inputs;
  }

  private static double number(Map<String, String> inputs, String name) {
    return Double.parseDouble(inputs.get(name));
  }

  static Solid solid(String name) {
    for (int i = 0; i < Solid.size(); i++) {
      if (Solid.at(i).name().equals(name)) {
        return Solid.at(i);
      }
    }
    throw new IllegalArgumentException(name);
  }

  static StockSalt salt(String name) {
    StockSalt salt = StockSalts.find(name);
    return salt != null ? salt : UnlistedSalt.of(Salts.of(name));
  }

  private static List<Stock.Weighed> weighed(Map<String, String> inputs) {
    List<Stock.Weighed> salts = new ArrayList<>();
    for (String name : inputs.keySet()) {
      if (!List.of("t_C", "litres", "solid", "quantity", "target_index").contains(name)) {
        salts.add(new Stock.Weighed(salt(name), number(inputs, name)));
      }
    }
    return salts;
  }

  private static Contents contents(Map<String, String> inputs) {
    List<MixedBottle.Poured> salts = MixedBottle.poured(weighed(inputs));
    return Contents.of(salts, number(inputs, "litres"), false);
  }

  private static double[] of(Solid solid, double molality) {
    double[] m = new double[COUNT];
    for (int i = 0; i < COUNT; i++) {
      m[i] = solid.count(i) * molality;
    }
    return m;
  }

  private static double gamma(Solid solid, double molality, double celsius) {
    Pitzer.Activities activities = new Pitzer(celsius).at(of(solid, molality));
    double sum = 0;
    int ions = 0;
    for (int i = 0; i < COUNT; i++) {
      sum += solid.count(i) * activities.lnGamma()[i];
      ions += solid.count(i);
    }
    return Math.exp(sum / ions);
  }

  private static void close(Row r, double got) {
    assertThat(got)
        .as(r.idAndProvenance())
        .isCloseTo(r.num("expected"), offset(r.num("tolerance")));
  }

  @ParameterizedTest
  @MethodSource("models")
  void model(Row r) {
    Map<String, String> in = inputs(r);
    switch (r.text("kind")) {
      case "aphi" -> close(r, Pitzer.slope(number(in, "t_C")));
      case "J" -> close(r, UnlikeCharges.j(number(in, "x")));
      case "aw" -> {
        double[] m = of(solid(in.get("salt")), number(in, "molality"));
        close(r, Math.exp(new Pitzer(number(in, "t_C")).at(m).lnWater()));
      }
      default -> {
        Solid solid = solid(in.get("salt"));
        double got = gamma(solid, number(in, "molality"), number(in, "t_C"));
        if (in.containsKey("over_molality")) {
          got /= gamma(solid, number(in, "over_molality"), number(in, "t_C"));
        }
        close(r, got);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("constants")
  void constant(Row r) {
    Map<String, String> in = inputs(r);
    double celsius = number(in, "t_C");
    close(r, solid(in.get("solid")).lnConstant(celsius, new Pitzer(celsius)));
  }

  @ParameterizedTest
  @MethodSource("bottles")
  void bottle(Row r) {
    Map<String, String> in = inputs(r);
    double celsius = number(in, "t_C");
    Contents contents = contents(in);
    double[] m = contents.molality();
    Pitzer.Activities at = new Pitzer(celsius).at(m);
    double strength = Pitzer.ionicStrength(m);
    String what = r.text("kind") + in.getOrDefault("quantity", "");
    close(
        r,
        switch (what) {
          case "water", "stepwater_kg" -> contents.waterKg();
          case "first-look" -> MixedBottle.firstLook(m, celsius);
          case "index" -> index(in.get("solid"), m, celsius);
          case "stepm_SO4" -> m[Species.SO4];
          case "stepionic_strength" -> strength;
          case "stepln_iap_KNO3" -> solid("KNO3").lnProduct(m, at);
          case "stepln_iap_K2SO4" -> solid("K2SO4").lnProduct(m, at);
          case "stepe_theta_1_2" -> new UnlikeCharges(Pitzer.slope(celsius), strength).e;
          default -> throw new IllegalArgumentException(what);
        });
  }

  private static double index(String solid, double[] m, double celsius) {
    Brine brine = new Brine(m, celsius);
    for (int i = 0; i < brine.size(); i++) {
      if (brine.solid(i).name().equals(solid)) {
        return brine.index(i, m);
      }
    }
    throw new IllegalArgumentException(solid);
  }

  private static MixedBottle.Answer judged(Map<String, String> in) {
    return MixedBottle.of(weighed(in), number(in, "litres"), number(in, "t_C"));
  }

  @ParameterizedTest
  @MethodSource("verdicts")
  void verdict(Row r) {
    MixedBottle.Answer got = judged(inputs(r));
    assertThat(got.verdict().word + " " + got.worstSolid())
        .as(r.idAndProvenance())
        .isEqualTo(r.text("expected"));
    assertThat(r.text("provenance")).contains(got.band() == 0.1 ? "band 0.10" : "band 0.20");
  }

  @ParameterizedTest
  @MethodSource("fallouts")
  void fallsOut(Row r) {
    MixedBottle.Answer got = judged(inputs(r));
    if (r.text("expected").equals("none")) {
      assertThat(got.fallen()).as(r.idAndProvenance()).isEmpty();
      assertThat(got.fallsOutG()).isZero();
      return;
    }
    String[] expected = r.text("expected").split(";");
    assertThat(got.fallen()).as(r.idAndProvenance()).hasSize(expected.length);
    double sum = 0;
    for (MixedBottle.Fallen one : got.fallen()) {
      sum += one.grams();
      boolean found = false;
      for (String part : expected) {
        int is = part.lastIndexOf('=');
        if (part.substring(0, is).equals(one.solid())) {
          assertThat(one.grams())
              .as(r.idAndProvenance())
              .isCloseTo(Double.parseDouble(part.substring(is + 1)), offset(grams(r)));
          found = true;
        }
      }
      assertThat(found).as(one.solid()).isTrue();
    }
    assertThat(got.fallsOutG()).isCloseTo(sum, offset(1e-9));
  }

  private static double grams(Row r) {
    assertThat(r.text("tolerance")).endsWith(" g each");
    return Double.parseDouble(r.text("tolerance").replace(" g each", ""));
  }

  @ParameterizedTest
  @MethodSource("strengths")
  void strength(Row r) {
    Map<String, String> in = inputs(r);
    double target = number(in, "target_index");
    close(r, Strength.factor(weighed(in), number(in, "litres"), number(in, "t_C"), target));
    // all of these have the narrow band, whose lower edge is the target
    close(r, Strength.strongest(weighed(in), number(in, "litres"), number(in, "t_C")));
  }

  private static double[] molalities(Map<String, String> in) {
    double[] m = new double[COUNT];
    for (String name : in.keySet()) {
      if (name.startsWith("m_")) {
        m[Species.of(name.substring(2))] = number(in, name);
      }
    }
    return m;
  }

  @ParameterizedTest
  @MethodSource("published")
  void againstMeasuredSolubilities(Row r) {
    Map<String, String> in = inputs(r);
    double[] m = molalities(in);
    double celsius = number(in, "t_C");
    switch (r.text("kind")) {
      case "published-index" -> close(r, index(in.get("solid"), m, celsius));
      case "published-worst" -> close(r, new Brine(m, celsius).worstIndex(m));
      default -> {
        assertThat(r.text("expected")).isEqualTo("over 0");
        assertThat(new Brine(m, celsius).worstIndex(m)).as(r.idAndProvenance()).isPositive();
      }
    }
  }

  @ParameterizedTest
  @MethodSource("mixedSolubilities")
  void solubilityInAnotherSalt(Row r) {
    Map<String, String> in = inputs(r);
    Solid solid = solid(in.get("solid"));
    double celsius = number(in, "t_C");
    double[] other = of(solid(in.get("in")), number(in, "in_molality"));
    double molality =
        Roots.bracketed(
            x -> {
              double[] m = of(solid, x);
              for (int i = 0; i < COUNT; i++) {
                m[i] += other[i];
              }
              return index(in.get("solid"), m, celsius);
            },
            1e-6,
            6);
    close(r, molality * solid.anhydrousMass() / 10);
  }
}
