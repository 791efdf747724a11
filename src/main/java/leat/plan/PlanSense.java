package leat.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import leat.energy.Timing;
import leat.numeric.Impossible;
import leat.quantity.Nearest;
import leat.solution.ElementName;
import leat.solution.acid.Acids;
import leat.solution.conductivity.PpmScale;

/**
 * Mistakes that only several values together show: low above full, dates that run backwards, a crop
 * in a tower that is none. Values that are missing or wrong in themselves are passed over.
 */
final class PlanSense {
  private final Section root;
  private final Section before;
  private final List<Problem> problems;

  private PlanSense(Section root, Section before, List<Problem> problems) {
    this.root = root;
    this.before = before;
    this.problems = problems;
  }

  static void check(Section root, List<Problem> problems) {
    check(root, null, problems);
  }

  /**
   * Looks only at what is not shared with a plan that has no mistakes.
   *
   * @param before that plan, over which numbers were laid; null to look at all
   */
  static void check(Section root, Section before, List<Problem> problems) {
    PlanSense sense = new PlanSense(root, before, problems);
    for (int i = 0; i < root.values.length; i++) {
      if (before == null || root.values[i] != before.values[i]) {
        sense.look(root.key.keys[i].name);
      }
    }
  }

  private void look(String key) {
    switch (key) {
      case "tank":
        TankSense.check(root.section("tank"), problems);
        if (before != null) {
          sender();
          PipeSense.bucket(root.section("pump"), root.section("tank"), problems);
        }
        break;
      case "sender":
        sender();
        break;
      case "pump":
        PipeSense.pump(root.section("pump"), root.section("tank"), problems);
        break;
      case "pipe":
        PipeSense.pipe(root.section("pipe"), problems);
        break;
      case "towers":
        towers();
        break;
      default:
        lookOn(key);
    }
  }

  private void lookOn(String key) {
    switch (key) {
      case "cap_sensor":
        capSensor();
        break;
      case "timing":
        windows("timing", root.sections("timing"), true);
        break;
      case "tariff":
        windows("bands", root.section("tariff").sections("bands"), false);
        break;
      case "feed":
        feed();
        break;
      case "meters":
        scale(root.section("meters").section("ec"));
        break;
      case "target":
        targets();
        break;
      case "crops":
        crops();
        break;
      case "season":
        dates();
        break;
      default:
    }
  }

  private void sender() {
    SenderSense.check(root.section("sender"), TankSense.rim(root.section("tank")), problems);
  }

  /** Whether a tower differs in a section or list of its own; a number leaves all names. */
  private boolean differs(int i, String name) {
    return before == null
        || root.sections("towers").get(i).raw(name) != before.sections("towers").get(i).raw(name);
  }

  /** Tells a value that lies over another one; {@code why} says what is wrong with that. */
  static void notOver(
      Section section, String name, String other, String why, List<Problem> problems) {
    Double value = section.maybe(name);
    Double limit = section.maybe(other);
    if (value != null && limit != null && value > limit) {
      problems.add(PlanErrors.levelOver(section, name, other, why));
    }
  }

  private void capSensor() {
    Section sensor = root.section("cap_sensor");
    Double wet = sensor.maybe("wet");
    if (wet != null && wet.equals(sensor.maybe("dry"))) {
      problems.add(PlanErrors.sameCounts(sensor));
    }
  }

  private void towers() {
    List<Section> towers = root.sections("towers");
    for (int i = 0; i < towers.size(); i++) {
      if (differs(i, "riser")) {
        PipeSense.pipe(towers.get(i).section("riser"), problems);
      }
      if (differs(i, "modules")) {
        modules(towers, i);
      }
    }
  }

  private void modules(List<Section> towers, int i) {
    String name = towers.get(i).text("name");
    for (int k = 0; k < i; k++) {
      if (name != null && name.equals(towers.get(k).text("name"))) {
        problems.add(PlanErrors.namedTwice(towers.get(i), name));
        break;
      }
    }
    List<Section> modules = towers.get(i).sections("modules");
    for (int k = 0; k < modules.size(); k++) {
      notOver(modules.get(k), "overlap", "height", "it sits deeper than it is high", problems);
    }
  }

  private void windows(String what, List<Section> entries, boolean firstHoldsAlways) {
    for (int i = 0; i < entries.size(); i++) {
      Section entry = entries.get(i);
      boolean timing = "timing".equals(what);
      if (timing && entry.has("run") && entry.has("rest")) {
        try {
          new Timing(entry.need("run"), entry.need("rest"));
        } catch (Impossible e) {
          problems.add(PlanErrors.refusedByTrade(entry, e.quantity(), e));
        }
      }
      boolean from = entry.node("from") != null;
      if (from != (entry.node("to") != null)) {
        problems.add(PlanErrors.halfWindow(entry, from ? "from" : "to", from ? "to" : "from"));
      }
      if (entry.has("from") && entry.need("from") == MINUTES_OF_DAY) {
        problems.add(PlanErrors.windowStart(entry));
      }
      if (i == 0 && firstHoldsAlways) {
        firstHoldsAlways(entry);
      }
    }
  }

  private static final int MINUTES_OF_DAY = 1440;

  private void firstHoldsAlways(Section entry) {
    String[] names = {"from", "months", "days"};
    for (int i = 0; i < names.length; i++) {
      if (entry.has(names[i])) {
        problems.add(PlanErrors.firstHasWindow(entry, names[i]));
        return;
      }
    }
  }

  private void feed() {
    Section acid = root.section("feed").section("acid");
    if (acid.has("name")) {
      try {
        Acids.named(acid.text("name"));
      } catch (Impossible e) {
        problems.add(PlanErrors.refusedByTrade(acid, "name", e));
      }
    }
    List<Section> salts = root.section("feed").sections("salts");
    for (int i = 0; i < salts.size(); i++) {
      Named elements = salts.get(i).named("elements");
      for (int k = 0; k < elements.size(); k++) {
        try {
          ElementName.of(elements.name(k));
        } catch (Impossible e) {
          String near =
              "ion".equals(e.quantity())
                  ? null
                  : Nearest.of(elements.name(k), java.util.Arrays.asList(ElementName.names()));
          problems.add(
              PlanErrors.notAnElement(
                  elements,
                  k,
                  salts.get(i).path("elements"),
                  e.getMessage() + (near == null ? "" : "; did you mean \"" + near + "\"?")));
        }
      }
    }
  }

  private void scale(Section meter) {
    if (meter.has("scale")) {
      try {
        PpmScale.of(meter.need("scale"));
      } catch (Impossible e) {
        problems.add(PlanErrors.refusedByTrade(meter, "scale", e));
      }
    }
  }

  private void targets() {
    Section target = root.section("target");
    notOver(target, "ec_low", "ec_high", "the lowest EC is above the highest", problems);
    notOver(target, "ec_low", "ec", "the lowest EC is above the one aimed at", problems);
    notOver(target, "ec", "ec_high", "the EC aimed at is above the highest", problems);
    notOver(target, "ph_low", "ph_high", "the lowest pH is above the highest", problems);
    notOver(target, "ph_low", "ph", "the lowest pH is above the one aimed at", problems);
    notOver(target, "ph", "ph_high", "the pH aimed at is above the highest", problems);
  }

  private void crops() {
    List<Section> towers = root.sections("towers");
    List<String> names = new ArrayList<>();
    for (int i = 0; i < towers.size(); i++) {
      if (towers.get(i).has("name")) {
        names.add(towers.get(i).text("name"));
      }
    }
    List<Section> crops = root.sections("crops");
    for (int i = 0; i < crops.size(); i++) {
      Section crop = crops.get(i);
      String tower = crop.text("tower");
      if (tower != null
          && names.size() == towers.size()
          && !names.isEmpty()
          && !names.contains(tower)) {
        problems.add(PlanErrors.noSuchTower(crop, tower, names));
      }
      inOrder(crop, "sow", "until");
    }
  }

  private void dates() {
    Section season = root.section("season");
    inOrder(season, "from", "to");
    List<Section> away = season.sections("away");
    for (int i = 0; i < away.size(); i++) {
      inOrder(away.get(i), "from", "to");
    }
  }

  private void inOrder(Section section, String first, String last) {
    LocalDate from = (LocalDate) section.raw(first);
    LocalDate to = (LocalDate) section.raw(last);
    if (from != null && to != null && to.isBefore(from)) {
      problems.add(PlanErrors.dateOrder(section, last, first));
    }
  }
}
