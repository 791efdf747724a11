package leat.command.plans;

import java.util.OptionalDouble;
import leat.controller.CapTable;
import leat.controller.MeterFactors;
import leat.controller.SenderTable;
import leat.controller.TimingTable;
import leat.controller.TowerHeader;
import leat.level.CapSensor;
import leat.level.Divider;
import leat.level.Sender;
import leat.plan.Plan;
import leat.plan.Section;
import leat.plan.Taken;
import leat.quantity.NumberText;
import leat.quantity.Units;
import leat.system.RunNeeds;
import leat.system.SenderOf;
import leat.system.SetValves;
import leat.system.TimetableOf;
import leat.system.TowerAt;
import leat.system.Waterway;

/** The pieces of a header, as far as the plan says enough for each. */
final class HeaderParts {
  final LeftOut left = new LeftOut();
  private final Plan plan;
  private final Taken taken;
  private final TowerHeader header;
  private CapSensor sensor;
  private String[] towers = {};
  private double[] wetAfter = {};

  HeaderParts(Plan plan, TowerHeader header, Taken taken) {
    this.taken = taken;
    this.plan = plan;
    this.header = header;
  }

  void add() {
    left.make("full mark", () -> mark("FULL", SenderOf.fullVolume(plan, taken), "mL, when full"));
    left.make("refill mark", () -> mark("LOW", low(), "mL, at the refill mark"));
    sender();
    left.make("cap sensor", () -> sensor = sensor(plan.section("cap_sensor")));
    left.make("time until the cap is wet", this::waits);
    if (sensor != null || towers.length > 0) {
      header.add(new CapTable(sensor, towers, wetAfter));
    }
    timing();
    meters(plan.section("meters"));
  }

  private void mark(String name, double volume, String meaning) {
    header.mark(name, NumberText.nearest(Units.ML.fromBase(volume)), meaning);
  }

  private double low() {
    Double low = SenderOf.lowVolume(plan, taken);
    if (low == null) {
      throw plan.section("tank").missing("low");
    }
    return low;
  }

  private void sender() {
    SenderTable[] table = new SenderTable[1];
    boolean given =
        left.make(
            "sender",
            () -> {
              Section section = plan.section("sender");
              Sender sender = SenderOf.of(plan, taken);
              Divider divider = SenderOf.divider(section, taken);
              table[0] =
                  new SenderTable(sender.readBy(divider), divider, SenderOf.lowVolume(plan, taken));
              header.add(table[0]);
            });
    if (given) {
      left.make(
          "low cut-off",
          () -> {
            low();
            table[0].cutoffCounts();
          });
    }
  }

  private static CapSensor sensor(Section section) {
    return new CapSensor(section.need("wet"), section.need("dry"));
  }

  private void waits() {
    if (plan.root().sections("towers").isEmpty()) {
      throw plan.root().missing("towers");
    }
    Waterway way = Waterway.judged(plan, taken);
    SetValves valves = SetValves.of(way, taken);
    double[] seconds = new double[way.towers()];
    String[] names = new String[seconds.length];
    for (int t = 0; t < seconds.length; t++) {
      OptionalDouble fill = new TowerAt(way, t, valves.low(way)).fillTime();
      seconds[t] = fill.isPresent() ? fill.getAsDouble() : Double.NaN;
      names[t] = way.name(t);
    }
    wetAfter = seconds;
    towers = names;
  }

  private void timing() {
    boolean given =
        left.make(
            "timing",
            () ->
                header.add(new TimingTable(TimetableOf.of(plan), RunNeeds.dryLimit(plan, taken))));
    if (!given) {
      header.add(new TimingTable(null, RunNeeds.dryLimit(plan, taken)));
    }
  }

  private void meters(Section meters) {
    Double[] found = {null, null};
    left.make("EC meter", () -> found[0] = meters.section("ec").need("slope"));
    left.make("pH meter", () -> found[1] = meters.section("ph").need("offset"));
    header.add(new MeterFactors(found[0], found[1]));
  }
}
