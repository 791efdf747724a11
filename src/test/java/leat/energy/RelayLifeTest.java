package leat.energy;

import static leat.energy.DutyTest.refused;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RelayLifeTest {
  static Stream<Row> rows() {
    return Sheet.of("energy-relay.csv").atLeast(10);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void agreesWithTheSheet(Row r) {
    Motor motor =
        new Motor(
            r.num("pump_W"), r.num("supply_V"), r.num("power_factor"), r.num("inrush_multiple"));
    Contact contact =
        new Contact(
            r.num("contact_rated_A"),
            r.num("rated_operations"),
            r.num("mechanical_operations"),
            r.num("life_exponent"));
    Duty duty =
        Duty.of(Cells.timing(r), Cells.pumpOnly(r.num("pump_W")), 0, 0, 0, r.num("season_days"));
    RelayLife relay = RelayLife.of(motor, contact, duty.startsTotal(), duty.days());
    Close.to(r, "run_A", relay.runA());
    Close.to(r, "inrush_A", relay.inrushA());
    assertThat(relay.suits()).isEqualTo(Boolean.parseBoolean(r.text("contact_suits")));
    Close.to(r, "contact_use_pct", 100 * relay.contactUse());
    Close.toOrEmpty(r, "life_operations", relay.operations());
    Close.to(r, "starts_per_day", relay.startsPerDay());
    Close.to(r, "starts_season", duty.startsTotal());
    Close.toOrEmpty(r, "relay_days", relay.days());
    Close.toOrEmpty(r, "relay_seasons", relay.seasons());
  }

  @Test
  void withoutPauseARelayLastsForGood() {
    RelayLife life = RelayLife.of(Cells.mains(22, 230), Contact.of(10, 1e5), 0, 180);
    assertThat(life.days()).isEmpty();
    assertThat(life.seasons()).isEmpty();
    assertThat(life.operations()).hasValue(1e5);
    assertThat(life.suits()).isTrue();
    assertThat(RelayLife.of(Cells.mains(900, 230), Contact.of(3, 1e5), 0, 180).suits()).isFalse();
  }

  @Test
  void noLoadIsHeldAtTheMechanicalLife() {
    Contact contact = new Contact(10, 1e5, 1e7, 1);
    assertThat(RelayLife.of(Cells.mains(0, 230), contact, 10, 180).operations()).hasValue(1e7);
    Contact noCredit = Contact.of(10, 1e5);
    assertThat(RelayLife.of(Cells.mains(0, 230), noCredit, 10, 180).operations()).hasValue(1e5);
  }

  @Test
  void refusesWhatCannotBe() {
    refused("power", () -> Cells.mains(-1, 230));
    refused("supply", () -> Cells.mains(1, 0));
    refused("power factor", () -> new Motor(1, 230, 1.2, 6));
    refused("inrush", () -> new Motor(1, 230, 1, 0.5));
    refused("relay rating", () -> Contact.of(0, 1e5));
    refused("relay cycles", () -> Contact.of(10, 0));
    refused("mechanical cycles", () -> new Contact(10, 1e5, 0, 0));
    refused("life exponent", () -> new Contact(10, 1e5, 1e7, -1));
    refused("starts", () -> RelayLife.of(Cells.mains(1, 230), Contact.of(10, 1e5), -1, 1));
    refused("days", () -> RelayLife.of(Cells.mains(1, 230), Contact.of(10, 1e5), 1, 0));
  }
}
