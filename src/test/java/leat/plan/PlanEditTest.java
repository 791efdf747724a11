package leat.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * {@code leat plan set}: what it writes is what {@code --set} reads (the second route), and all
 * other letters of the file stay.
 */
class PlanEditTest {
  private static final String PLAN =
      """
      # my tower
      name: mine
      tank: {shape: box, bottom: 400 mm x 300 mm,  # inside
        height: 300 mm, full: 250 mm, low: 60 mm}
      pump:   # from its box
        shutoff_head: 2.4 m
        max_flow: 1000 L/h   # printed

        # the bucket
        derate: 70%
      towers:
        - name: kitchen
          outlet: 1.7 m   # tape
          riser: &tube
            bore: 12 mm
            length: 1.9 m
        - name: Hallway
          riser: *tube
          outlet: 1.5 m
      # the end
      timing: [{run: 90 s, rest: 12 min}]
      """;

  private static String set(String plan, String path, String value) {
    PlanEdit edit = PlanEdit.of("p.yaml", plan);
    edit.set(path, value);
    edit.check();
    return edit.text();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\0',
      ignoreLeadingAndTrailingWhitespace = false,
      value = {
        "pump.derate|65 %|  derate: 70%|  derate: 65 %",
        "pump.max_flow|900 L/h|max_flow: 1000 L/h   # printed|max_flow: 900 L/h   # printed",
        "tank.full|240 mm|full: 250 mm,|full: 240 mm,",
        "tank.low|70 mm|low: 60 mm}|low: 70 mm}",
        "tank.intake|40 mm|low: 60 mm}|low: 60 mm, intake: 40 mm}",
        "pump.power|22 W|  derate: 70%\\n|  derate: 70%\\n  power: 22 W\\n",
        "pump.measured|7.4 L/min @ 250 mm|  derate: 70%\\n|  derate: 70%\\n  measured: 7.4 L/min @ 250 mm\\n",
        "towers[Hallway].outlet|1.6 m|outlet: 1.5 m|outlet: 1.6 m",
        "towers[1].wanted|3 L/min|outlet: 1.5 m\\n|outlet: 1.5 m\\n    wanted: 3 L/min\\n",
        "towers[kitchen].riser.bore|13 mm|bore: 12 mm|bore: 13 mm",
        "timing[0].run|60 s|run: 90 s|run: 60 s",
        "timing[1]|{run: 5 s, rest: 1 h}|12 min}]|12 min}, {run: 5 s, rest: 1 h}]",
        "timing[1].run|5 s|12 min}]|12 min}, {run: 5 s}]",
        "rain.ec|0.05 mS/cm|12 min}]\\n|12 min}]\\nrain:\\n  ec: 0.05 mS/cm\\n",
        "tank.drain.bore|19 mm|low: 60 mm}|low: 60 mm, drain: {bore: 19 mm}}",
        "name|yes|name: mine|name: \"yes\"",
        "limits.pump-margin|15 %|12 min}]\\n|12 min}]\\nlimits:\\n  pump-margin: 15 %\\n",
        "pump.derate||\\n  derate: 70%\\n|\\n",
        "tank.low||, low: 60 mm}|}",
        "tank.height||height: 300 mm, full|full",
        "towers[1].outlet||    outlet: 1.5 m\\n|",
        "towers[1].name||name: Hallway\\n    riser|riser",
        "towers[1]||  - name: Hallway\\n    riser: *tube\\n    outlet: 1.5 m\\n|",
        "towers[0].riser.k|2.5|length: 1.9 m\\n|length: 1.9 m\\n      k: 2.5\\n",
        "towers[1].riser|{bore: 10 mm, length: 2 m}|*tube|{bore: 10 mm, length: 2 m}",
        "pump|{shutoff_head: 2 m, max_flow: 600 L/h}|"
            + "pump:   # from its box\\n  shutoff_head: 2.4 m\\n  max_flow: 1000 L/h   # printed\\n\\n"
            + "  # the bucket\\n  derate: 70%\\n|pump: {shutoff_head: 2 m, max_flow: 600 L/h}   # from its box\\n",
        "towers[*].outlet|1 m|*|*",
      })
  void onlyTheValueChanges(String path, String value, String old, String now) {
    String typed = value == null ? "" : value;
    String expected =
        "*".equals(old)
            ? PLAN.replace("outlet: 1.7 m", "outlet: 1 m").replace("outlet: 1.5 m", "outlet: 1 m")
            : PLAN.replace(old.replace("\\n", "\n"), now == null ? "" : now.replace("\\n", "\n"));
    assertThat(PLAN).isNotEqualTo(expected);
    String text;
    try {
      PlanEdit edit = PlanEdit.of("p.yaml", PLAN);
      edit.set(path, typed);
      text = edit.text();
    } catch (Refused e) {
      throw new AssertionError(e.getMessage(), e);
    }
    assertThat(text).isEqualTo(expected);
  }

  /** Every value of the example plans, written as it is read, in the file and by --set. */
  @ParameterizedTest
  @ValueSource(strings = {"first-tower.yaml", "terrace.yaml", "proud-tower.yaml"})
  void whatIsWrittenIsWhatSetReads(String file) throws IOException {
    String text = Files.readString(Path.of("examples", file));
    int done = 0;
    for (PlanShow.Entry entry :
        PlanShow.of(Plan.Draft.of(Source.file(file, text)).read(), List.of()).entries()) {
      if (entry.line() == 0 || !entry.from().equals("plan")) {
        continue;
      }
      String value = other(entry.value());
      String written;
      try {
        written = set(text, entry.path(), value);
      } catch (Refused e) {
        continue;
      }
      List<String> expected =
          shown(
              Plan.Draft.of(Source.file(file, text))
                  .set(entry.path(), Source.flag(entry.path(), value))
                  .read());
      List<String> got = shown(Plan.Draft.of(Source.file(file, written)).read());
      assertThat(got).as(entry.path()).contains(entry.path() + "=" + at(expected, entry.path()));
      if (!text.contains("&")) {
        assertThat(got).as(entry.path()).containsExactlyElementsOf(expected);
      }
      assertThat(remarks(written)).as(entry.path()).isEqualTo(remarks(text));
      done++;
    }
    assertThat(done).isGreaterThan(20);
  }

  /** The same value, twice as many of its digits changed: 12 mm becomes 13 mm. */
  private static String other(String value) {
    for (int i = value.length() - 1; i >= 0; i--) {
      char c = value.charAt(i);
      if (c >= '1' && c <= '8') {
        return value.substring(0, i) + (char) (c + 1) + value.substring(i + 1);
      }
    }
    return value;
  }

  private static String at(List<String> shown, String path) {
    return shown.stream()
        .filter(s -> s.startsWith(path + "="))
        .findFirst()
        .orElseThrow()
        .substring(path.length() + 1);
  }

  private static List<String> shown(Plan plan) {
    List<String> all = new ArrayList<>();
    PlanShow.of(plan, List.of()).entries().forEach(e -> all.add(e.path() + "=" + e.value()));
    return all;
  }

  private static List<String> remarks(String text) {
    List<String> all = new ArrayList<>();
    for (String line : text.split("\n")) {
      int at = line.startsWith("#") ? 0 : line.indexOf(" #");
      if (at >= 0) {
        all.add(line.substring(at).strip());
      }
    }
    return all;
  }

  @Test
  void anAliasIsRefusedByItsAnchor() {
    assertThatThrownBy(() -> set(PLAN, "towers[1].riser.bore", "10 mm"))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("&tube in line 15");
    String merged =
        """
        towers:
          - &one
            name: a
            riser: {bore: 12 mm}
          - <<: *one
            name: b
        """;
    assertThatThrownBy(() -> set(merged, "towers[b].riser.bore", "10 mm"))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("&one");
    assertThat(set(merged, "towers[b].outlet", "1 m")).isEqualTo(merged + "    outlet: 1 m\n");
  }

  /** Every item that [*] sets is told, with its line in the text as it then stands. */
  @Test
  void everyItemIsToldWithItsLine() {
    PlanEdit edit =
        PlanEdit.of("p.yaml", "towers:\n  - name: a\n  - name: b\n    tie: 9 N\n  - name: c\n");
    List<PlanEdit.Done> done = edit.set("towers[*].tie", "80 N");
    List<String> lines = edit.text().lines().toList();
    assertThat(done).extracting(PlanEdit.Done::before).containsExactly(null, "9 N", null);
    for (int i = 0; i < 3; i++) {
      PlanEdit.Done now = edit.now(done.get(i));
      assertThat(now.path()).isEqualTo("towers[" + i + "].tie");
      assertThat(lines.get(now.line() - 1)).isEqualTo("    tie: 80 N");
    }
  }

  /** One key begins no item, but several do, and so does a name. */
  @Test
  void oneKeyBeginsNoItem() {
    PlanEdit edit = PlanEdit.of("p.yaml", "towers:\n  - name: a\n");
    assertThatThrownBy(() -> edit.refuseLone(List.of("towers[1].tie"), 0, "80 N"))
        .hasMessageContaining("the last is towers[0]");
    edit.refuseLone(List.of("towers[1].tie", "towers[1].outlet"), 0, "80 N");
    edit.refuseLone(List.of("towers[1].name"), 0, "b");
    edit.refuseLone(List.of("towers[1]"), 0, "{name: b}");
    edit.refuseLone(List.of("timing[0].run"), 0, "80 s");
  }

  @Test
  void aSharedAnchorIsTold() {
    PlanEdit.Done done = PlanEdit.of("p.yaml", PLAN).set("towers[0].riser", "{bore: 10 mm}").get(0);
    assertThat(done.anchor()).isEqualTo("tube");
  }

  @Test
  void windowsLinesAndMissingLastLineFeedsStay() {
    String windows = "name: a\r\npump:\r\n  power: 5 W\r\n";
    assertThat(set(windows, "pump.derate", "70 %"))
        .isEqualTo("name: a\r\npump:\r\n  power: 5 W\r\n  derate: 70 %\r\n");
    assertThat(set("pump:\n  power: 5 W", "pump.derate", "70 %"))
        .isEqualTo("pump:\n  power: 5 W\n  derate: 70 %");
    assertThat(set("pump:\nname: a\n", "pump.power", "5 W"))
        .isEqualTo("pump:\n  power: 5 W\nname: a\n");
    assertThat(set("about: µ 😀\npump: {power: 5 W}\n", "pump.power", "6 W"))
        .isEqualTo("about: µ 😀\npump: {power: 6 W}\n");
  }

  @Test
  void theLineToChangeIsNamed() {
    PlanEdit edit = PlanEdit.of("p.yaml", PLAN);
    assertThat(ByHand.line(edit, "pump.derate", "65 %"))
        .isEqualTo("in p.yaml, line 10, under pump, write  derate: 65 %");
    assertThat(ByHand.line(edit, "pump.measured", "7.4 L/min @ 250 mm"))
        .isEqualTo("in p.yaml, below line 10, under pump, write  measured: 7.4 L/min @ 250 mm");
    assertThat(ByHand.line(edit, "rain.ec", "0.05 mS/cm"))
        .isEqualTo("at the end of p.yaml write  rain: {ec: 0.05 mS/cm}");
    assertThat(ByHand.line(edit, "towers[1].riser.bore", "10 mm")).contains("the anchor &tube");
  }

  @Test
  void theOldFileStaysOnAnyFault(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("mine.yaml");
    Files.writeString(file, PLAN);
    for (String set :
        new String[] {"pump.derate=70 mm", "pump.derat=70%", "tank.full=1 m", "pump.curve=[]"}) {
      Leat said = Leat.in(folder, "", Map.of(), "plan", "set", "mine.yaml", "name=b", set);
      assertThat(said.code).as(set).isEqualTo(2);
      assertThat(Files.readString(file)).isEqualTo(PLAN);
    }
    Leat said = Leat.in(folder, "", Map.of(), "plan", "set", "mine.yaml", "pump.derate=65%");
    assertThat(said.code).as(said.err).isZero();
    assertThat(said.out)
        .startsWith("pump.derate is 65% now; it was 70%. See mine.yaml, line 10.\n");
    assertThat(Files.readString(file)).isEqualTo(PLAN.replace("70%", "65%"));
  }

  @Test
  void aPipeTakesAndGivesAPlan() {
    Leat said = Leat.in(Path.of("."), PLAN, Map.of(), "plan", "set", "-", "pump.derate=65%");
    assertThat(said.out).isEqualTo(PLAN.replace("70%", "65%"));
  }

  @Test
  void aStarterInUsUnitsIsTheSameTower() throws IOException {
    Leat us = Leat.run("plan", "new", "--units", "us", "--currency", "USD");
    assertThat(us.out).contains("currency: USD", "units: us").doesNotContain(" mm", "EUR");
    Plan metric = Plan.Draft.of(Source.file("m", Starter.text(null))).read();
    Plan other = Plan.Draft.of(Source.file("u", us.out)).read();
    int compared = 0;
    for (PlanShow.Entry entry : PlanShow.of(metric, List.of()).entries()) {
      Object value = entry.line() == 0 ? null : Plans.at(metric.root(), entry.path());
      if (value instanceof Double number) {
        double read = (Double) Plans.at(other.root(), entry.path());
        assertThat(read).as(entry.path()).isBetween(number * 0.99 - 1e-9, number * 1.01 + 1e-9);
        compared++;
      }
    }
    assertThat(compared).isGreaterThan(20);
  }
}
