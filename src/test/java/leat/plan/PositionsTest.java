package leat.plan;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Wherever and however a mistake is typed, line, column and caret point at it. */
class PositionsTest {
  /** A way to write a plan around one wrong value. */
  record Written(String text, String wrong) {}

  private static final String[][] WRONG = {
    // key path of two levels, the value, the wrong part in it
    {"tank", "height", "330 qy", "qy"},
    {"tank", "bottom", "480 mm x 300 qy", "qy"},
    {"pump", "measured", "9.2 L/min @ 330 qy", "qy"},
    {"pump", "power", "15 bananas", "bananas"},
    {"pump", "derate", "-5 %", "-5 %"},
    {"strainer", "wire", "5 mm mm", "mm mm"},
    {"clean", "with", "vodka", "vodka"},
    {"season", "from", "soon", "soon"},
    {"prices", "pump", "24 EUX", "EUX"},
  };

  @Provide
  Arbitrary<Written> plans() {
    Arbitrary<String[]> wrong = Arbitraries.of(WRONG);
    Arbitrary<String> before =
        Arbitraries.of(
            "",
            "# remark\n",
            "# \ud83c\udf31\ud83c\udf31 seedling\n",
            "name: \ud83c\udf31\n",
            "\n\n",
            "about: >\n  two\n  lines\n");
    Arbitrary<String> quote = Arbitraries.of("", "\"", "'");
    Arbitrary<Integer> shape = Arbitraries.integers().between(0, 3);
    Arbitrary<String> end = Arbitraries.of("\n", "\r\n", "\r");
    Arbitrary<Boolean> bom = Arbitraries.of(true, false);
    return Combinators.combine(wrong, before, quote, shape, end, bom)
        .as((w, b, q, s, e, m) -> written(w, b, q, s, e));
  }

  private static Written written(String[] w, String before, String quote, int shape, String end) {
    String value = quote + w[2] + quote;
    String text =
        switch (shape) {
          case 0 -> w[0] + ":\n    " + w[1] + ": " + value + "\n";
          case 1 -> w[0] + ": {" + w[1] + ": " + value + "}\n";
          case 2 -> w[0] + ": { \"" + w[1] + "\" :   " + value + "   }   # remark\n";
          default -> w[0] + ":\n  " + w[1] + ":\n    " + value + "   # \ud83c\udf31 remark\n";
        };
    return new Written((before + text + "rain: {}\n").replace("\n", end), w[3]);
  }

  @Property(tries = 2000)
  void point(@ForAll("plans") Written plan) {
    String told = Plans.refused(plan.text());
    String[] lines = told.split("\n");
    assertThat(lines).as(told).hasSize(3);
    String[] place = lines[0].split(":");
    int line = Integer.parseInt(place[1]);
    int column = Integer.parseInt(place[2]);
    String typed = plan.text().split("\r\n|\r|\n", -1)[line - 1];
    int offset = typed.offsetByCodePoints(0, column - 1);
    assertThat(typed.substring(offset)).as(told).startsWith(plan.wrong());
    int gutter = lines[1].indexOf('|') + 2;
    assertThat(lines[1].substring(gutter)).isEqualTo(typed);
    int caret = lines[2].indexOf('^') - gutter;
    assertThat(caret).as(told).isEqualTo(column - 1);
    assertThat(lines[2].substring(gutter).strip()).isEqualTo("^".repeat(plan.wrong().length()));
  }

  @Property(tries = 300)
  void valuesWithEscapesArePointedAtAsAWhole(@ForAll("escaped") String value) {
    String told = Plans.refused("tank:\n  height: " + value + "\n");
    assertThat(told).startsWith("p.yaml:2:1");
    assertThat(told.split("\n")[2]).contains("^");
  }

  @Provide
  Arbitrary<String> escaped() {
    return Arbitraries.of(
        "\"330\\u0020qy\"",
        "'330 ''qy'",
        "\"330\\\n    qy\"",
        "330\n    qy",
        "|\n    330 qy",
        ">\n    330 qy");
  }
}
