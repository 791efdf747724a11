package leat.solution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import leat.numeric.Impossible;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CropsTest {
  static Stream<Row> rows() {
    return Sheet.of("solution-crops.csv").atLeast(17);
  }

  static Stream<Row> sets() {
    return Sheet.of("solution-crops-sets.csv").atLeast(7);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void theTableIsTheSheets(Row r) {
    Crop crop = Crops.find(r.text("crop"));
    assertThat(crop.name()).isEqualTo(r.text("crop"));
    assertThat(crop.ecLowMsCm()).isEqualTo(r.num("ec_low_mS_cm"));
    assertThat(crop.ecHighMsCm()).isEqualTo(r.num("ec_high_mS_cm"));
    assertThat(crop.phLow()).isEqualTo(r.num("ph_low"));
    assertThat(crop.phHigh()).isEqualTo(r.num("ph_high"));
    assertThat(crop.source()).isEqualTo(r.text("source"));
    assertThat(crop.known()).isEqualTo(r.text("known"));
  }

  static void close(Row r, String column, Double got) {
    if (!r.has(column)) {
      assertThat(got).as(r.idAndProvenance() + " " + column).isNull();
      return;
    }
    double want = r.num(column);
    assertThat(got)
        .as(r.idAndProvenance() + " " + column)
        .isCloseTo(want, offset(r.num("tol_rel") * Math.max(1, Math.abs(want))));
  }

  @ParameterizedTest
  @MethodSource("sets")
  void setsAgreeWithTheSheet(Row r) {
    List<Crop> crops = Stream.of(r.text("crops").split(";")).map(Crops::find).toList();
    Crops.Shared s = Crops.share(crops);
    assertThat(s.canShare()).isEqualTo(Boolean.parseBoolean(r.text("can_share")));
    close(r, "ec_low_mS_cm", s.ecLowMsCm());
    close(r, "ec_high_mS_cm", s.ecHighMsCm());
    close(r, "ec_gap_mS_cm", s.ecGapMsCm());
    close(r, "ph_low", s.phLow());
    close(r, "ph_high", s.phHigh());
    close(r, "ph_gap", s.phGap());
    String pairs =
        s.clashes().stream()
            .map(c -> c.one().name() + "+" + c.other().name())
            .collect(Collectors.joining(";"));
    assertThat(pairs).isEqualTo(r.text("clashing_pairs"));
    boolean point = s.canShare() && (s.ecOnePoint() || s.phOnePoint());
    assertThat(point).isEqualTo(r.text("note").equals("one point only") && s.canShare());
  }

  /** Helly in one dimension: a set shares exactly when no pair clashes. */
  @Test
  void aSetSharesExactlyWhenEveryPairDoes() {
    Random dice = new Random(3);
    for (int n = 0; n < 5000; n++) {
      List<Crop> crops = new ArrayList<>();
      int size = 1 + dice.nextInt(5);
      for (int i = 0; i < size; i++) {
        crops.add(Crops.all().get(dice.nextInt(Crops.all().size())));
      }
      Crops.Shared s = Crops.share(crops);
      assertThat(s.canShare()).isEqualTo(s.clashes().isEmpty());
      for (Crop crop : crops) {
        if (s.canShare()) {
          assertThat(s.ecMiddleMsCm()).isBetween(crop.ecLowMsCm(), crop.ecHighMsCm());
          assertThat(s.phMiddle()).isBetween(crop.phLow(), crop.phHigh());
        }
      }
      for (Crop out : s.leaveOut()) {
        List<Crop> rest = new ArrayList<>(crops);
        rest.removeIf(c -> c == out);
        if (!rest.isEmpty()) {
          assertThat(Crops.share(rest).canShare()).isTrue();
        }
      }
    }
  }

  @Test
  void aSinglePhIsWidenedOnlyWhenAsked() {
    Crop bean = Crops.find("bean");
    assertThat(bean.phIsPoint()).isTrue();
    assertThat(Crops.widened(bean).phLow()).isCloseTo(5.7, offset(1e-12));
    assertThat(Crops.widened(bean).phHigh()).isCloseTo(6.3, offset(1e-12));
    Crop lettuce = Crops.find("lettuce");
    assertThat(Crops.widened(lettuce)).isSameAs(lettuce);
    assertThat(Crops.share(List.of(bean, Crops.find("pak-choi"))).phGap()).isEqualTo(1);
  }

  @Test
  void namesAndSources() {
    assertThat(Crops.find("zucchini")).isSameAs(Crops.find("courgette"));
    assertThat(Crops.find("moonflower")).isNull();
    assertThat(Crops.secondOpinions("lettuce").get(0).ecLowMsCm()).isEqualTo(1.15);
    assertThat(Crops.secondOpinions("sage")).isEmpty();
    for (String name : Crops.names()) {
      assertThat(Crops.find(name)).as(name).isNotNull();
      assertThat(Crops.find(name).source()).isNotBlank();
    }
  }

  @Test
  void leavesOutTheOneThatClashes() {
    Crops.Shared s =
        Crops.share(List.of(Crops.find("lettuce"), Crops.find("basil"), Crops.find("parsley")));
    assertThat(s.leaveOut()).containsExactly(Crops.find("basil"), Crops.find("parsley"));
  }

  /** The sheet's bands are from memory of their source; the others name none: common practice. */
  @Test
  void howTheBandsAreKnown() {
    List<String> ofSheet = rows().map(r -> r.text("crop")).toList();
    for (Crop crop : Crops.all()) {
      boolean sourced = ofSheet.contains(crop.name());
      assertThat(crop.isFromMemory()).as(crop.name()).isEqualTo(sourced);
      assertThat(crop.isCommonPractice()).as(crop.name()).isEqualTo(!sourced);
      assertThat(crop.source().contains("no source")).as(crop.name()).isEqualTo(!sourced);
    }
    int sourced = ofSheet.size();
    assertThat(Crops.kinds(Crops.all()))
        .isEqualTo(new Crops.Kinds(sourced, Crops.all().size() - sourced));
    Crop own = new Crop("okra", 2, 2.4, 6, 6.5, "the plan", "own");
    assertThat(Crops.kinds(List.of(own))).isEqualTo(new Crops.Kinds(0, 0));
  }

  @Test
  void everyCropOfTheSheetCanBeAskedFor() {
    for (Row r : Sheet.of("solution-crops.csv").rows()) {
      assertThat(Crops.names()).contains(r.text("crop"));
    }
    assertThat(Crops.names()).contains("zucchini", "eggplant", "arugula");
  }

  /** Where all share nobody is left out; where only the pH parts two, either may go. */
  @Test
  void whomToLeaveOut() {
    Crop lettuce = Crops.find("lettuce");
    assertThat(Crops.share(List.of(lettuce, Crops.find("rocket"))).leaveOut()).isEmpty();
    Crop bean = Crops.find("bean");
    Crop cabbage = Crops.find("cabbage");
    Crops.Shared s = Crops.share(List.of(bean, cabbage));
    assertThat(s.ecLowMsCm()).as("they share an EC").isNotNull();
    assertThat(s.phLow()).isNull();
    assertThat(s.leaveOut()).containsExactly(bean, cabbage);
  }

  @Test
  void refusesWhatCannotBe() {
    assertThatThrownBy(() -> Crops.share(List.of())).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> new Crop("x", 2, 1, 5, 6, "", "own")).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> new Crop("x", 1, 2, 5, 15, "", "own")).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> new Crop("x", -1, 2, 5, 6, "", "own")).isInstanceOf(Impossible.class);
  }
}
