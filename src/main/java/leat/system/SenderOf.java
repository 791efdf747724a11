package leat.system;

import java.util.List;
import leat.level.Divider;
import leat.level.Ladder;
import leat.level.Limits;
import leat.level.Sender;
import leat.level.Staircase;
import leat.level.Tank;
import leat.numeric.Impossible;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.plan.Section;
import leat.plan.Taken;
import leat.quantity.SenderStep;
import leat.quantity.Span;

/**
 * The sender of a plan: its steps by height, its edges by litres or its ladder by drawing, with the
 * tank it stands in. Edges work in a tank of unknown shape too, when {@code tank.holds} says what
 * it holds to the rim.
 */
public final class SenderOf {
  private SenderOf() {}

  /** Whether a plan's {@code sender} section says what the steps are. */
  public static boolean isKnown(Section sender) {
    return sender.has("steps") || sender.has("edges") || sender.section("ladder").isGiven();
  }

  /** The sender in use; refused with the key that is missing or wrong. */
  public static Sender of(Plan plan, Taken taken) {
    Section section = plan.section("sender");
    Staircase staircase = staircase(plan, taken);
    double edgeError = edgeError(section, taken);
    Limits limits = limits(section, taken);
    double full = fullVolume(plan, taken);
    try {
      return new Sender(staircase.withEdgeError(edgeError), limits, full);
    } catch (Impossible e) {
      throw new Refused(SenderErrors.refused(section, e));
    }
  }

  /**
   * Volume at the full mark, m3; in a tank of unknown shape what it holds, when no mark is given.
   */
  public static double fullVolume(Plan plan, Taken taken) {
    Section tank = plan.section("tank");
    if (TankOf.isKnown(tank)) {
      return TankOf.of(tank, taken).volume(tank.need("full"));
    }
    Double full = tank.maybe("holds_full");
    if (full != null) {
      return full;
    }
    double holds = tank.need("holds");
    taken.note("full is what the tank holds");
    return holds;
  }

  /** Volume at the refill mark, m3, or null when the plan does not say. */
  public static Double lowVolume(Plan plan, Taken taken) {
    Section tank = plan.section("tank");
    return TankOf.isKnown(tank) && tank.has("low")
        ? Double.valueOf(TankOf.of(tank, taken).volume(tank.need("low")))
        : null;
  }

  /** How far an edge in litres may lie from what the plan says, m3; 0 for steps by drawing. */
  public static double edgeError(Section sender, Taken taken) {
    return sender.has("edges") ? sender.get("edge_error", taken) : 0;
  }

  /** Its steps, the edges taken as exact. */
  public static Staircase staircase(Plan plan, Taken taken) {
    Section sender = plan.section("sender");
    Section tank = plan.section("tank");
    try {
      if (sender.has("edges")) {
        return byEdges(sender, tank, taken);
      }
      if (sender.has("steps")) {
        Tank known = TankOf.of(tank, taken);
        return bySteps(sender, known, taken);
      }
      if (sender.section("ladder").isGiven()) {
        return Staircase.byLadder(TankOf.of(tank, taken), ladder(sender.section("ladder"), taken));
      }
    } catch (Impossible e) {
      throw new Refused(SenderErrors.refused(sender, e));
    }
    throw sender.missing("steps");
  }

  private static Staircase bySteps(Section sender, Tank tank, Taken taken) {
    List<?> steps = sender.list("steps");
    double hysteresis = hysteresis(sender, taken);
    double[] at = at(steps);
    double[] ohms = ohms(steps);
    Double below = sender.maybe("below");
    if (below == null || at[0] == 0 || isOneStep(sender, below, ohms[0], taken)) {
      return Staircase.bySteps(tank, at, ohms, hysteresis);
    }
    return Staircase.bySteps(tank, before(0, at), before(below, ohms), hysteresis);
  }

  /** Whether two resistances are read as one, as a step's own and the one fitted under it. */
  private static boolean isOneStep(Section sender, double one, double other, Taken taken) {
    Limits limits = limits(sender, taken);
    return Math.abs(one - other) <= limits.halfWindow(one) + limits.halfWindow(other);
  }

  private static double[] before(double first, double[] others) {
    double[] all = new double[others.length + 1];
    all[0] = first;
    System.arraycopy(others, 0, all, 1, others.length);
    return all;
  }

  private static Staircase byEdges(Section sender, Section tank, Taken taken) {
    List<?> edges = sender.list("edges");
    double below = sender.need("below");
    if (TankOf.isKnown(tank)) {
      double hysteresis = hysteresis(sender, taken);
      return Staircase.byEdges(TankOf.of(tank, taken), at(edges), ohms(edges), below, hysteresis);
    }
    if (sender.has("hysteresis") && sender.need("hysteresis") > 0) {
      throw new Refused(SenderErrors.hysteresisNeedsShape(sender));
    }
    double holds = tank.need("holds");
    double hysteresis = sender.get("hysteresis_volume", taken);
    return Staircase.byEdgesAlone(holds, at(edges), ohms(edges), below, hysteresis);
  }

  private static double hysteresis(Section sender, Taken taken) {
    if (sender.has("hysteresis_volume")) {
      throw new Refused(SenderErrors.hysteresisIsLength(sender));
    }
    return sender.get("hysteresis", taken);
  }

  private static double[] at(List<?> steps) {
    double[] at = new double[steps.size()];
    for (int i = 0; i < at.length; i++) {
      at[i] = ((SenderStep) steps.get(i)).at().value();
    }
    return at;
  }

  private static double[] ohms(List<?> steps) {
    double[] ohms = new double[steps.size()];
    for (int i = 0; i < ohms.length; i++) {
      ohms[i] = ((SenderStep) steps.get(i)).reading().value();
    }
    return ohms;
  }

  /** The reeds of a plan's {@code sender.ladder}. */
  public static Ladder ladder(Section ladder, Taken taken) {
    double[] levels = levels(ladder);
    int reeds = levels.length;
    Span stops = (Span) ladder.needRaw("stops");
    return new Ladder(
        levels,
        resistors(ladder, reeds),
        "top".equals(returnAt(ladder, taken)) ? Ladder.ReturnAt.TOP : Ladder.ReturnAt.BOTTOM,
        ladder.need("pull_in"),
        ladder.need("drop_out"),
        stops.low().value(),
        stops.high().value());
  }

  private static double[] levels(Section ladder) {
    if (!ladder.has("levels")) {
      int reeds = (int) ladder.need("reeds");
      return Ladder.evenReeds(reeds, ladder.need("first"), ladder.need("pitch"));
    }
    List<?> given = ladder.list("levels");
    if (ladder.has("reeds") && ladder.need("reeds") != given.size()) {
      throw new Refused(SenderErrors.reedsDiffer(ladder, given.size()));
    }
    double[] levels = new double[given.size()];
    for (int i = 0; i < levels.length; i++) {
      levels[i] = (Double) given.get(i);
    }
    return levels;
  }

  /**
   * Given resistors, else equal ones from empty to full; these say the return's end by themselves.
   */
  private static double[] resistors(Section ladder, int reeds) {
    if (!ladder.has("resistors")) {
      if (!ladder.has("empty") && !ladder.has("full")) {
        throw ladder.missing("resistors");
      }
      return Ladder.evenResistors(reeds, ladder.need("empty"), ladder.need("full"));
    }
    List<?> given = ladder.list("resistors");
    double[] resistors = new double[given.size()];
    for (int i = 0; i < resistors.length; i++) {
      resistors[i] = (Double) given.get(i);
    }
    return resistors;
  }

  private static String returnAt(Section ladder, Taken taken) {
    if (!ladder.has("resistors") && !ladder.has("return_at")) {
      return ladder.need("full") > ladder.need("empty") ? "bottom" : "top";
    }
    return ladder.word("return_at", taken);
  }

  /** What counts as a step, as open and as short. */
  public static Limits limits(Section sender, Taken taken) {
    double reading = sender.get("reading", taken);
    double tolerance = sender.get("tolerance", taken);
    double lead = sender.get("lead", taken);
    double open = sender.get("open_above", taken);
    double shorted = sender.get("short_below", taken);
    try {
      return new Limits(reading, tolerance, lead, open, shorted);
    } catch (Impossible e) {
      throw new Refused(SenderErrors.refused(sender, e));
    }
  }

  /** Whether the plan says how the sender is read by an ADC. */
  public static boolean hasDivider(Section sender) {
    return sender.section("divider").isGiven();
  }

  /** The divider and ADC of a plan's {@code sender.divider}. */
  public static Divider divider(Section sender, Taken taken) {
    return divider(sender, sender.section("divider").need("resistor"), taken);
  }

  /**
   * The divider with a resistor of one's own.
   *
   * @param fixed the fixed resistor, ohm
   * @param taken notes the defaults that are taken
   */
  public static Divider divider(Section sender, double fixed, Taken taken) {
    Section divider = sender.section("divider");
    double supply = divider.need("supply");
    Double reference = divider.maybe("reference");
    boolean ratiometric =
        divider.has("ratiometric")
            ? divider.yes("ratiometric", taken)
            : reference == null || reference == supply;
    if (reference == null) {
      taken.note("the ADC's reference is the supply");
    }
    try {
      return new Divider(
          "high".equals(divider.word("sender_side", taken)) ? Divider.Side.HIGH : Divider.Side.LOW,
          supply,
          ratiometric ? 0 : divider.get("supply_tolerance", taken),
          fixed,
          divider.get("resistor_tolerance", taken),
          divider.count("bits", taken),
          reference == null ? supply : reference,
          ratiometric ? 0 : divider.get("reference_tolerance", taken),
          ratiometric,
          divider.get("adc_error", taken));
    } catch (Impossible e) {
      throw new Refused(SenderErrors.refused(sender, e));
    }
  }
}
