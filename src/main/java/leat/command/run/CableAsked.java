package leat.command.run;

import java.util.OptionalDouble;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.cli.Call;
import leat.energy.Cable;
import leat.energy.Copper;
import leat.system.CableOf;

/** What a call of {@code duty cable} asks, apart from the wire: supply, pump, length, warmth. */
final class CableAsked {
  final Call call;
  final CableOf cable;

  /** Voltage that the pump needs to start, V; null when unknown. */
  final Double leastV;

  private final Copper.Strands strands;
  private final double celsius;
  private final double mostDrop;

  CableAsked(Call call) {
    this.call = call;
    this.cable = new CableOf(call.plan(), call.taken());
    this.strands = strands(call);
    this.celsius = celsius(call);
    this.leastV = call.above0("--least-voltage");
    Double good = call.above0("--drop");
    this.mostDrop = good == null ? Cable.GOOD_DROP : good;
  }

  private static Copper.Strands strands(Call call) {
    if (!call.has("--strands")) {
      call.taken().note("flexible cord");
    }
    return "solid".equals(call.value("--strands"))
        ? Copper.Strands.SOLID_OR_STRANDED
        : Copper.Strands.FLEXIBLE;
  }

  private static double celsius(Call call) {
    Double typed = call.quantity("--temperature");
    if (typed == null) {
      call.taken().note("copper 20 C");
    }
    return typed == null ? CableOf.USUAL_CELSIUS : typed;
  }

  private double least() {
    return leastV == null ? 0 : leastV;
  }

  /** The cable with a section of this many m2. */
  Cable with(double area) {
    return cable.with(area, strands, celsius, least());
  }

  /** The thinnest usual section that will do, m2. */
  OptionalDouble leastSize() {
    return cable.leastSize(strands, celsius, least(), mostDrop);
  }

  /** The thinnest usual wire gauge that will do. */
  OptionalDouble leastGauge() {
    return cable.leastGauge(celsius, least(), mostDrop);
  }

  /** The length as typed, or as a reader of US units wants it. */
  String length() {
    return call.us() ? Phrase.of(cable.length(), Show.M).render(true) : cable.lengthTyped();
  }
}
