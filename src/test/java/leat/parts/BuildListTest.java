package leat.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import leat.numeric.Impossible;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class BuildListTest {
  private static final Printer ONE = new Printer(1, 2, 120, 1800);

  private static BuildList.Stock petg(Double price) {
    return new BuildList.Stock("PETG", 0.08, 1, price);
  }

  private static BigDecimal cents(double money) {
    return BigDecimal.valueOf(money);
  }

  @Property
  void costsAddUpToTheCentAndMassesToThePieces(
      @ForAll @Size(min = 1, max = 8) List<@DoubleRange(min = 0.01, max = 3) Double> masses,
      @ForAll @IntRange(min = 1, max = 40) int pieces,
      @ForAll @DoubleRange(min = 0.01, max = 60) double price,
      @ForAll @DoubleRange(min = 0, max = 1) double energy,
      @ForAll @DoubleRange(min = 0, max = 200) double pump) {
    List<Part> parts = new ArrayList<>();
    double net = 0;
    for (int i = 0; i < masses.size(); i++) {
      parts.add(new Part("part " + i, pieces, masses.get(i), 3600.0 * (i + 1), i % 2));
      for (int k = 0; k < pieces; k++) {
        net += masses.get(i);
      }
    }
    BuildList list =
        new BuildList(
            parts,
            List.of(petg(price), new BuildList.Stock("ASA", 0.1, 0.75, price / 2)),
            ONE,
            energy,
            List.of(new Purchase("pump", pump), new Purchase("tank", null)));
    assertThat(list.net()).isCloseTo(net, within(1e-9 * net));
    BigDecimal sum = cents(list.leftOnSpools()).add(cents(list.purchasesCost()));
    BigDecimal rows = BigDecimal.ZERO;
    for (double one : list.partCosts()) {
      assertThat(cents(one).scale()).isLessThanOrEqualTo(2);
      rows = rows.add(cents(one));
    }
    assertThat(sum.add(rows)).isEqualByComparingTo(cents(list.total()));
    assertThat(rows)
        .isEqualByComparingTo(cents(list.filamentCostByMass()).add(cents(list.energyCost())));
  }

  /** 7 x 260 g, 2 x 340 g, 1 x 200 g by hand: 2.7 kg, 2.916 with 8 %: 3 spools of 22. */
  @Test
  void aSmallListByHand() {
    BuildList list =
        new BuildList(
            List.of(
                new Part("leaf", 7, 0.26, 6 * 3600.0, 0),
                new Part("herb", 2, 0.34, 9 * 3600.0, 0),
                new Part("cap", 1, 0.2, 5 * 3600.0, 0)),
            List.of(petg(22.0)),
            ONE,
            0.31,
            List.of(new Purchase("pump", 24.0)));
    assertThat(list.pieces()).isEqualTo(10);
    assertThat(list.gross()).isCloseTo(2.916, within(1e-9));
    assertThat(list.spools()).isEqualTo(3);
    assertThat(list.filamentCost()).isEqualTo(66.0);
    assertThat(list.filamentCostByMass()).isEqualTo(64.15);
    assertThat(list.leftOnSpools()).isEqualTo(1.85);
    assertThat(list.run().machineTime()).isEqualTo(65 * 3600.0);
    assertThat(list.energyCost()).isEqualTo(2.42); // 7.8 kWh
    assertThat(list.total()).isEqualTo(92.42);
    assertThat(list.run().days()).isEqualTo(5);
  }

  @Test
  void withoutPricesThereAreFiguresWithoutMoney() {
    BuildList list =
        new BuildList(
            List.of(new Part("leaf", 7, 0.26, null, 0)),
            List.of(petg(null)),
            ONE,
            0.3,
            Collections.emptyList());
    assertThat(list.spools()).isEqualTo(2);
    assertThat(list.filamentCost()).isNull();
    assertThat(list.filamentCostByMass()).isNull();
    assertThat(list.leftOnSpools()).isNull();
    assertThat(list.partCosts()).isNull();
    assertThat(list.total()).isNull();
    assertThat(list.run()).isNull();
    assertThat(list.energyCost()).isNull();
  }

  @Test
  void partsAreSharedByThePrinters() {
    double h = 3600;
    PrintRun run =
        PrintRun.of(new double[] {5 * h, 9 * h, 5 * h, 6 * h}, new Printer(2, 2, 100, h));
    assertThat(run.jobsOnBusiest()).isEqualTo(2);
    assertThat(run.daysTooFull()).isFalse();
    assertThat(PrintRun.of(new double[] {16 * h}, new Printer(1, 2, 100, 0)).daysTooFull())
        .isTrue();
  }

  @Test
  void materialsByTheirWords() {
    for (Material one : Material.values()) {
      assertThat(Material.named(one.word().toLowerCase(java.util.Locale.ROOT))).isEqualTo(one);
    }
    assertThat(Material.named("oak")).isNull();
    assertThat(Material.ASA.softensCelsius()).isGreaterThan(Material.PLA.softensCelsius());
  }

  /** Whole spools only: exactly full spools are not one more. */
  @Test
  void fullSpools() {
    assertThat(new Filament(3 / 1.1, 0.1, 1).spools()).isEqualTo(3);
    assertThat(new Filament(3.001 / 1.1, 0.1, 1).spools()).isEqualTo(4);
    assertThat(new Filament(0, 0.1, 1).spools()).isZero();
  }

  /** 75 kg on 0.4 x 0.6 m by hand: 735.5 N on 0.24 m2. */
  @Test
  void deckLoad() {
    assertThat(DeckLoad.pressure(75, 0.24)).isCloseTo(3064.6, within(0.1));
    double area = DeckLoad.areaFor(75, 2000);
    assertThat(DeckLoad.pressure(75, area)).isCloseTo(2000, within(1e-9));
  }

  @Test
  void wetMassesAddUp() {
    WetMass both = new WetMass(5.5, 6.72, 0.276, 0.226).and(new WetMass(1, 2, 0, 0));
    assertThat(both.off()).isCloseTo(15.22, within(1e-12));
    assertThat(both.on()).isCloseTo(15.722, within(1e-12));
  }

  @Test
  void refusesWhatCannotBePrinted() {
    List<Runnable> wrong = new ArrayList<>();
    wrong.add(() -> new Part("leaf", 0, 0.2, null, 0));
    wrong.add(() -> new Part("leaf", 1, 0, null, 0));
    wrong.add(() -> new Part("leaf", 1, 0.2, 0.0, 0));
    wrong.add(() -> new Printer(0, 2, 120, 0));
    wrong.add(() -> new Printer(1, 0, 120, 0));
    wrong.add(() -> new Filament(1, 0.1, 0));
    wrong.add(() -> new Purchase("pump", -1.0));
    wrong.add(() -> petg(-1.0));
    wrong.add(() -> DeckLoad.pressure(1, 0));
    wrong.add(() -> new WetMass(-1, 0, 0, 0));
    wrong.add(
        () ->
            new BuildList(
                List.of(new Part("leaf", 1, 0.2, null, 1)),
                List.of(petg(1.0)),
                ONE,
                null,
                List.of()));
    for (Runnable one : wrong) {
      assertThatThrownBy(one::run).isInstanceOf(Impossible.class);
    }
  }
}
