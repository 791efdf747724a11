package leat.log;

/**
 * Something that happened, from a start to an end.
 *
 * <p>Source: sheet log.md section 3.
 */
public final class LogEvent {
  /** Water went up and came back, yet the cap stays dry. */
  public static final String CAP_SENSOR_DRY = "cap sensor dry";

  /** The level is at the intake: the pump draws air. */
  public static final String PUMP_DREW_AIR = "pump drew air";

  /** Nothing moved. */
  public static final String PUMP_DEAD = "pump dead";

  /** Water went up and was lost. */
  public static final String HOSE_OFF = "hose off";

  /** Emptied while the pump rested, and not filled again within the time of a change. */
  public static final String DRAINED = "drained";

  /** Not touching wires: so small a number is a step's resistance in kilo-ohm. */
  public static final String KILO_OHM = "reads like kilo-ohm";

  /** It happened while no rows came. */
  public static final String WITHIN_GAP = "within a gap";

  private final EventKind kind;
  private final long start;
  long end;
  boolean open;
  long told;
  double volume = Double.NaN;
  double volumeLow = Double.NaN;
  double volumeHigh = Double.NaN;
  double mm = Double.NaN;
  double ecBefore = Double.NaN;
  double ecAfter = Double.NaN;
  String cause = "";

  LogEvent(EventKind kind, long start, long end) {
    this.kind = kind;
    this.start = start;
    this.end = end;
    this.told = end;
  }

  /** What it is. */
  public EventKind kind() {
    return kind;
  }

  /** Its begin, ms of Unix time. */
  public long start() {
    return start;
  }

  /** Its end, or the newest row while it is open, ms of Unix time. */
  public long end() {
    return end;
  }

  /** Whether it still goes on at the newest row. */
  public boolean isOpen() {
    return open;
  }

  /** The row that made it certain, ms of Unix time: when an alarm opens. */
  public long told() {
    return told;
  }

  /** Volume poured, caught or lost, m3; NaN when it has none. */
  public double volume() {
    return volume;
  }

  /** Low end of its band, m3. */
  public double volumeLow() {
    return volumeLow;
  }

  /** High end of its band, m3. */
  public double volumeHigh() {
    return volumeHigh;
  }

  /** Rain, mm; NaN for the others. */
  public double mm() {
    return mm;
  }

  /** EC after a pouring, mS/cm, a median; NaN when unknown. */
  public double ecAfter() {
    return ecAfter;
  }

  /** Why, in a few plain words; empty when there is nothing to say. */
  public String cause() {
    return cause;
  }
}
