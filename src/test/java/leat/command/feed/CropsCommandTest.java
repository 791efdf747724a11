package leat.command.feed;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import leat.Sheet;
import leat.cli.Cli;
import leat.cli.Examples;
import org.junit.jupiter.api.Test;

class CropsCommandTest {
  @Test
  void everySetOfTheSheet() throws Exception {
    int n = 0;
    for (Sheet.Row row : Sheet.of("solution-crops-sets.csv").rows()) {
      List<String> args = new ArrayList<>(List.of("crops"));
      args.addAll(List.of(row.text("crops").split(";")));
      args.addAll(List.of("--format", "json"));
      Cli cli = Cli.run(args.toArray(new String[0]));
      JsonNode whole = new ObjectMapper().readTree(cli.out);
      String id = row.text("case_id");
      boolean can = row.text("can_share").equals("true");
      assertThat(whole.get("can_share").asBoolean()).as(id).isEqualTo(can);
      assertThat(cli.exit).as(id).isEqualTo(can ? 0 : 1);
      String[] keys = {"ec_low_mS_cm", "ec_high_mS_cm", "ph_low", "ph_high"};
      for (String key : keys) {
        JsonNode value = whole.get("shared_" + key);
        if (row.text(key).isBlank()) {
          assertThat(value.isNull()).as(id + key).isTrue();
        } else {
          assertThat(value.asDouble()).as(id + key).isEqualTo(row.num(key));
        }
      }
      StringBuilder pairs = new StringBuilder();
      for (JsonNode clash : whole.get("clashes")) {
        pairs.append(clash.get("crop").asText()).append('+').append(clash.get("with").asText());
      }
      assertThat(pairs.toString()).as(id).isEqualTo(row.text("clashing_pairs"));
      n++;
    }
    assertThat(n).isEqualTo(7);
  }

  @Test
  void theSentenceNamesWhatToLeaveOut() {
    assertThat(Cli.run("crops", "lettuce", "basil", "parsley").out)
        .startsWith(
            "Lettuce, basil and parsley cannot share one tank; without basil or parsley the rest can.\n")
        .contains("basil and parsley     0.20 mS/cm apart");
    assertThat(Cli.run("crops", "lettuce", "basil").out)
        .startsWith(
            "Lettuce and basil can share one tank between 1.2 and 1.6 mS/cm, pH only at 6.0.\n")
        .contains("target: {ec: 1.4 mS/cm, ec_low: 1.2 mS/cm, ec_high: 1.6 mS/cm, ph: 6}");
  }

  @Test
  void aSinglePhIsWidenedOnlyWhenAsked() {
    assertThat(Cli.run("crops", "celery", "strawberry").exit).isEqualTo(1);
    Cli wide = Cli.run("crops", "celery", "strawberry", "--widen");
    // 6.5 - 0.3 and 6.0 + 0.3
    assertThat(wide.exit).isZero();
    assertThat(wide.out).contains("pH 6.2 to 6.3", "a single pH widened by 0.3 either way");
  }

  @Test
  void ownBandsOfThePlan() {
    Cli cli =
        Cli.run(
            "crops",
            "--set",
            "crops=[{name: lettuce}, {name: watercress, ec_low: 1.3 mS/cm, ec_high: 1.9 mS/cm, ph_low: 6.5, ph_high: 7.5}]",
            "--format",
            "json");
    assertThat(cli.number("shared_ec_low_mS_cm")).isEqualTo(1.3);
    assertThat(cli.number("shared_ph_low")).isEqualTo(6.5);
    assertThat(cli.number("shared_ph_high")).isEqualTo(7);
  }

  @Test
  void namesNobodyKnows() {
    Cli typo = Cli.run("crops", "latuce");
    assertThat(typo.err)
        .isEqualTo("leat crops: no band is known for \"latuce\"; did you mean \"lettuce\"?\n");
    assertThat(typo.exit).isEqualTo(2);
    Cli none = Cli.run("crops");
    assertThat(none.err)
        .isEqualTo("leat crops: a crop is needed, such as lettuce; --list shows them all\n");
    assertThat(none.exit).isEqualTo(2);
    Cli backwards =
        Cli.run(
            "crops",
            "--set",
            "crops=[{name: cress, ec_low: 2 mS/cm, ec_high: 1 mS/cm, ph_low: 6, ph_high: 7}]");
    assertThat(backwards.err)
        .isEqualTo("--set crops: cress: a band runs from its low end to its high end\n");
    assertThat(backwards.exit).isEqualTo(2);
  }

  @Test
  void listHoldsEveryCropOfTheSheet() {
    Cli cli = Cli.run("crops", "--list", "--format", "csv");
    for (Sheet.Row row : Sheet.of("solution-crops.csv").rows()) {
      assertThat(cli.out).contains("\n" + row.text("crop") + ",");
    }
  }

  /** solution-crops.csv says of each row how it is known: M from memory; the others have no row. */
  @Test
  void saysHowEachBandIsKnown() throws Exception {
    JsonNode whole =
        new ObjectMapper().readTree(Cli.run("crops", "--list", "--format", "json").out);
    int memory = 0;
    for (JsonNode crop : whole) {
      boolean fromMemory = false;
      for (Sheet.Row row : Sheet.of("solution-crops.csv").rows()) {
        fromMemory |= row.text("crop").equals(crop.get("crop").asText());
        assertThat(row.text("known")).isEqualTo("M");
      }
      memory += fromMemory ? 1 : 0;
      assertThat(crop.get("known").asText())
          .as(crop.get("crop").asText())
          .isEqualTo(fromMemory ? "from-memory" : "common-practice");
    }
    assertThat(Cli.run("crops", "--list").out.replaceAll("\\s+", " "))
        .contains(
            "of these "
                + whole.size()
                + " bands, "
                + memory
                + " from memory and "
                + (whole.size() - memory)
                + " from common practice were not checked against a printed source.");
    Cli own =
        Cli.run(
            "crops",
            "--set",
            "crops=[{name: cress, ec_low: 1 mS/cm, ec_high: 2 mS/cm, ph_low: 6, ph_high: 7}]");
    assertThat(own.out).startsWith("Cress grows between 1.0 and 2.0 mS/cm, pH 6.0 to 7.0.\n");
    assertThat(own.out).contains("own").doesNotContain("printed source");
  }

  @Test
  void aSecondSourceIsQuotedAsItStands() {
    assertThat(Cli.run("crops", "lettuce").out).contains("lettuce: 1.15 to 1.25 mS/cm, pH 5.6");
  }

  @Test
  void namesInAnyCaseAndWithBlanks() {
    assertThat(Cli.run("crops", "Pak Choi", "--format", "csv").out).contains("\npak-choi,1.5,2,");
    assertThat(Cli.run("crops", "SWISS chard").out).startsWith("Chard grows between 1.8 and 2.3");
  }

  @Test
  void examplesRun() {
    Examples.run(new CropsCommand());
  }
}
