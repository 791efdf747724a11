package leat.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import leat.quantity.Cadence;
import leat.quantity.CountAt;
import leat.quantity.MeasuredFlow;
import leat.quantity.PumpPoint;
import leat.quantity.SenderStep;
import leat.quantity.Size;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The whole sketch, value by value. The expected values of sketch-values.csv were made by another
 * YAML reader (PyYAML) and another table of units, in base units; two parts are separated by a bar.
 */
class SketchTest {
  private static List<CSVRecord> expected() throws IOException {
    try (CSVParser parser =
        CSVParser.parse(
            Path.of("src/test/resources/plans/sketch-values.csv"),
            StandardCharsets.UTF_8,
            CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get())) {
      return parser.getRecords();
    }
  }

  @Test
  void everyValueIsRead() throws IOException {
    Plan plan = Plans.plan(Plans.sketch());
    List<CSVRecord> rows = expected();
    assertThat(rows).hasSize(272);
    for (CSVRecord row : rows) {
      String path = row.get("path");
      String[] parts = row.get("expected").split("\\|");
      List<Object> found = flat(Plans.at(plan.root(), path));
      assertThat(found).as(path).hasSize(parts.length);
      for (int i = 0; i < parts.length; i++) {
        if (found.get(i) instanceof Number number) {
          double want = Double.parseDouble(parts[i]);
          assertThat(number.doubleValue()).as(path).isCloseTo(want, within(Math.abs(want) * 1e-4));
        } else {
          assertThat(String.valueOf(found.get(i))).as(path).isEqualTo(parts[i]);
        }
      }
    }
  }

  private static List<Object> flat(Object value) {
    List<Object> all = new ArrayList<>();
    if (value instanceof CountAt howMany) {
      all.add(howMany.count().value());
    } else if (value instanceof Size size) {
      all.add(size.length().value());
      all.add(size.width().value());
    } else if (value instanceof PumpPoint point) {
      all.add(point.flow().value());
      all.add(point.head().value());
    } else if (value instanceof SenderStep step) {
      all.add(step.at().value());
      all.add(step.reading().value());
    } else if (value instanceof MeasuredFlow flow) {
      all.add(flow.flow().value());
      all.add(flow.level().value());
    } else if (value instanceof Cadence cadence) {
      all.add(cadence.atLow() ? "at low" : "?");
    } else {
      all.add(value);
    }
    return all;
  }

  @Test
  void nothingElseIsInIt() throws IOException {
    PlanShow show = PlanShow.of(Plans.plan(Plans.sketch()), List.of());
    long leaves =
        show.entries().stream()
            .filter(e -> e.from().equals("plan"))
            .mapToLong(e -> e.value().matches("[\\[{].*") ? e.value().split(", ").length : 1)
            .sum();
    assertThat(leaves).isEqualTo(expected().size());
  }

  @ParameterizedTest
  @ValueSource(strings = {"tr-TR", "de-DE", "ar-EG", "th-TH-u-nu-thai"})
  void isReadTheSameInEveryLocale(String tag) throws IOException {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag(tag));
      everyValueIsRead();
      assertThat(Plans.refused("TANK: {}\n"))
          .isEqualTo(
              "p.yaml:1:1: TANK: unknown key; did you mean \"tank\"?\n  1 | TANK: {}\n    | ^^^^\n");
      assertThat(PlanShow.of(Plans.plan(Plans.sketch()), List.of("pump.power")).yaml())
          .isEqualTo("pump:\n  power: 24 W\n");
    } finally {
      Locale.setDefault(before);
    }
  }
}
