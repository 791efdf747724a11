package leat.html;

import java.util.List;

/** Command lines over the examples whose pages are looked at. */
final class Drawn {
  private Drawn() {}

  static List<String[]> lines() {
    return List.of(
        new String[] {"pump", "--plan", "first-tower.yaml"},
        new String[] {"season", "balcony.yaml"},
        new String[] {"check", "terrace.yaml"});
  }
}
