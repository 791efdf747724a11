package leat.command.feed;

import leat.cli.Call;
import leat.cli.CommandErrors;
import leat.command.sense.LevelColumns;
import leat.command.sense.LoggedTank;
import leat.command.sense.SenderReading;
import leat.level.Divider;
import leat.level.Reading;
import leat.level.Status;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.plan.Section;
import leat.quantity.Span;
import leat.system.SenderOf;
import leat.system.TankOf;

/** What is in the tank, m3: one volume, or a band when a stepped sender reads it. */
final class Held {
  final double low;
  final double middle;
  final double high;

  /** The sender's reading, or null when a volume was typed or a log read. */
  final Reading reading;

  /** The log's newest reading, or null without a log. */
  final LoggedTank log;

  private Held(double low, double middle, double high, Reading reading, LoggedTank log) {
    this.low = low;
    this.middle = middle;
    this.high = high;
    this.reading = reading;
    this.log = log;
  }

  /** One volume. */
  static Held of(double volume) {
    return new Held(volume, volume, volume, null, null);
  }

  /** What a reading says; its volumes are null when it is open or short. */
  static Held of(Reading reading) {
    return reading.hasBand()
        ? new Held(reading.volumeLow(), reading.volume(), reading.volumeHigh(), reading, null)
        : new Held(0, 0, 0, reading, null);
  }

  private static Held of(LoggedTank log) {
    return new Held(log.low(), log.volume(), log.high(), null, log);
  }

  /** Refuses two of a volume, a reading and a log. */
  static void refuseTwo(Call call) {
    String before = null;
    String[] ways = {"--volume", "--reading", "--log"};
    for (int i = 0; i < ways.length; i++) {
      if (call.has(ways[i]) && before != null) {
        throw new Refused(CommandErrors.notBoth(call.command, before, ways[i]));
      }
      before = call.has(ways[i]) ? ways[i] : before;
    }
  }

  /** What the call says is in the tank. */
  static Held of(Call call) {
    if (call.has("--reading")) {
      return of(sender(call).ofOperand(call.text("--reading")));
    }
    if (call.has("--log")) {
      return of(LoggedTank.of(call, call.has("--ec")));
    }
    Span span = (Span) call.value("--volume");
    if (span == null) {
      throw call.needs("--volume");
    }
    if (span.low().value() < 0) {
      throw new Refused(CommandErrors.cannotBeNegative("--volume", call.text("--volume")));
    }
    return within(call, span);
  }

  private static Held within(Call call, Span span) {
    refuseOverTheRim(call, span.high().value());
    return new Held(span.low().value(), span.middle(), span.high().value(), null, null);
  }

  /** Refuses a {@code --volume}, m3, that the plan's tank does not hold. */
  static void refuseOverTheRim(Call call, double volume) {
    Double capacity = capacity(call);
    if (capacity != null && volume > capacity) {
      throw new Refused(
          MixErrors.overTheRim("--volume", call.text("--volume"), capacity, call.us()));
    }
  }

  /** What the plan's tank holds to the rim, m3; null where its shape is not known. */
  static Double capacity(Call call) {
    Section tank = call.plan().section("tank");
    return TankOf.isKnown(tank) ? (Double) TankOf.of(tank, call.taken()).capacity() : null;
  }

  /** The plan's sender. */
  static SenderReading sender(Call call) {
    if (!call.hasPlan() && !call.has("--set")) {
      throw new Refused(CommandErrors.neededPlan(call.command));
    }
    Plan plan = call.plan();
    Divider divider =
        call.has("--counts") ? SenderOf.divider(plan.section("sender"), call.taken()) : null;
    return new SenderReading(SenderOf.of(plan, call.taken()), divider, LevelColumns.motion(call));
  }

  /** Whether nobody knows what is in the tank. */
  boolean isUnknown() {
    return reading != null && !reading.hasBand();
  }

  /** Whether it is a band. */
  boolean isBand() {
    return reading != null || high > low;
  }

  /** Status of the sender, or null without one; a log's is only taken when it is plain. */
  String status() {
    if (log != null) {
      return Status.OK.word();
    }
    return reading == null ? null : reading.status().word();
  }
}
