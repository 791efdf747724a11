package leat.command.feed;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.answer.Working;
import leat.cli.Call;
import leat.plan.Plan;
import leat.plan.Section;
import leat.quantity.NumberText;
import leat.solution.conductivity.Compensation;
import leat.solution.conductivity.EcReading;
import leat.solution.conductivity.LinearCompensation;
import leat.solution.conductivity.MeterCheck;

/** The part of {@code leat ec} that converts readings. */
final class EcReadings {
  /** For the text alone. */
  private static final Column AT = Column.of("at_C", "read at", Show.C);

  private static final Column SHOWN = Column.of("shown_mS_cm", "the meter shows", Show.MS_CM);
  private static final Column READ_PPM = Column.plain("read_ppm", "ppm as read");
  private static final Column LEAST = Column.number("least_pct", "at least", 2);
  private static final Column MOST_PCT = Column.number("most_pct", "at most", 2);
  private static final Column SCALE = Column.plain("scale", "scale");
  private static final Column SLOPE = Column.number("slope", "slope", 4);
  private static final Column COUNT = Column.plain("readings", "readings");
  private static final Column COLD = Column.of("cold_C", "cold", Show.C.digits(2));
  private static final Column ROOM = Column.of("room_C", "room", Show.C.digits(2));
  private static final Column FACTOR = Column.number("f25", "factor", 5);
  private static final Column MOST = Column.of("most_mS_cm", "most", Show.MS_CM.digits(2));

  /** A beaker on a desk, in the command proposed; any temperature would do. */
  private static final double DESK_CELSIUS = 22;

  private static final String RAW =
      "At {reference_C} this solution reads {ec25_mS_cm}: a meter without compensation shows {ec_mS_cm!} at {at_C}.";
  private static final String PPM =
      "{read_ppm} ppm on the scale of {scale} is an EC of {ec25_mS_cm}.";
  private static final String PLAIN =
      "An EC of {ec25_mS_cm} at {reference_C} is {ppm500} ppm on the scale of 500, {ppm640} on 640, {ppm700} on 700.";

  /** The same where the plan has the meter's factor: what it shows is not what there is. */
  private static final String CHECKED_RAW =
      "At {reference_C} this solution has {ec25_mS_cm}: by its last check the meter's {shown_mS_cm!} at {at_C} is {ec_mS_cm!}.";

  private static final String CHECKED_PPM =
      "{read_ppm} ppm of this meter, on the scale of {scale}, is an EC of {ec25_mS_cm} by its last check.";
  private static final String CHECKED =
      "By its last check the meter's {shown_mS_cm} is an EC of {ec25_mS_cm} at {reference_C}: {ppm500} ppm on the scale of 500, {ppm640} on 640, {ppm700} on 700.";

  private final Call call;
  private final Plan plan;
  private final Section meter;
  private final EcText text;
  private final Compensation by;
  private final Double at;

  EcReadings(Call call, EcText text) {
    this.call = call;
    this.text = text;
    this.plan = call.plan();
    this.meter = plan.section("meters").section("ec");
    this.by = EcCommand.compensation(call);
    this.at = call.quantity("--at");
  }

  Answer answer() {
    Answer answer = new Answer(columns());
    double slope = EcCommand.slope(plan);
    List<EcReading> readings = new ArrayList<>();
    for (int i = 0; i < call.operands().size(); i++) {
      double read = text.operand(call.operands().get(i));
      EcReading one = EcCommand.reading(MeterCheck.corrected(read, slope), at, by);
      Row row = answer.row().set(EcCommand.EC, one.ec());
      EcCommand.fill(row, one);
      if (meter.has("slope")) {
        row.set(SHOWN, read);
      }
      readings.add(one);
    }
    if (readings.size() == 1) {
      one(answer, readings.get(0));
    } else {
      several(answer, readings.size());
    }
    taken(answer);
    minds(answer, readings);
    next(answer);
    return answer;
  }

  /** The columns; what the meter shows is one where that is not what there is. */
  private Column[] columns() {
    Column[] all = {
      EcCommand.EC, EcCommand.EC25, EcCommand.PPM500, EcCommand.PPM640, EcCommand.PPM700, SHOWN
    };
    return meter.has("slope") ? all : java.util.Arrays.copyOf(all, all.length - 1);
  }

  private void several(Answer answer, int count) {
    Row row = Row.aside(COUNT).set(COUNT, count).with(EcCommand.reference());
    if (at == null) {
      answer.sentence(row, "{readings} readings, taken as already at {reference_C}.");
      answer.table(EcCommand.EC25, EcCommand.PPM500, EcCommand.PPM640, EcCommand.PPM700);
    } else {
      answer.sentence(row, "{readings} readings, brought to {reference_C}.");
      answer.table(columns());
    }
  }

  private void one(Answer answer, EcReading r) {
    Row row =
        answer
            .row(0)
            .with(EcCommand.reference())
            .with(Row.aside(AT, FACTOR).set(AT, r.celsius()).set(FACTOR, r.f25()));
    sentence(answer, row);
    if (meter.has("slope")) {
      answer.figure("as read", row, "{shown_mS_cm}", at == null ? "" : "at {at_C}");
      answer.figure("by the last check", row, "{ec_mS_cm}", at == null ? "" : "at {at_C}");
    } else if (at != null) {
      answer.figure("as read", row, "{ec_mS_cm}", "at {at_C}");
    }
    answer.figure(row, EcCommand.EC25, "at {reference_C}: compare this one with targets");
    answer.figure("as ppm", row, "{ppm500} (x500)", "{ppm640} (x640)", "{ppm700} (x700)");
    workings(answer, row, r);
  }

  private void sentence(Answer answer, Row row) {
    boolean checked = meter.has("slope");
    if (at != null) {
      answer.sentence(row, checked ? CHECKED_RAW : RAW);
    } else if (text.isPpm(call.operands().get(0))) {
      answer.sentence(row.with(ppm()), checked ? CHECKED_PPM : PPM);
    } else {
      answer.sentence(row, checked ? CHECKED : PLAIN);
    }
  }

  private Row ppm() {
    return Row.aside(READ_PPM, SCALE)
        .set(READ_PPM, NumberText.shortest(text.ppm(call.operands().get(0))))
        .set(SCALE, text.scale.factor());
  }

  private void workings(Answer answer, Row row, EcReading r) {
    if (at != null) {
      answer.working(
          Working.of(
              "EC at 25 C",
              by.isNaturalWater()
                  ? "EC25 = f25 EC, f25 = p(T)/p(25), p a polynomial of the fourth degree"
                  : "EC25 = EC / (1 + a (T - 25)/100)",
              Answer.filled(row, "EC = {ec_mS_cm}, T = {at_C}, f25 = {f25}"),
              r.ec25(),
              Show.MS_CM.digits(5),
              range(),
              by.isNaturalWater()
                  ? "ISO 7888:1985 (EN 27888), table of f25"
                  : "common instrument practice; 1.91 % is the coefficient of freshwater meters"));
    }
    ppm(answer, row, r);
  }

  private static void ppm(Answer answer, Row row, EcReading r) {
    answer.working(
        Working.number(
            "ppm on the scale of 500",
            "ppm = 500 EC25",
            Answer.filled(row, "EC25 = {ec25_mS_cm}"),
            r.ppm500(),
            5,
            "any",
            "common instrument practice"));
  }

  private String range() {
    return NumberText.shortest(by.coldest()) + " to " + NumberText.shortest(by.warmest()) + " C";
  }

  private void taken(Answer answer) {
    if (at != null) {
      EcCommand.taken(answer, by, call.us());
    } else {
      answer.taken(EcCommand.reference(), "the reading is already at {reference_C}");
    }
    if (meter.has("slope")) {
      answer.taken(
          Row.aside(SLOPE).set(SLOPE, meter.need("slope")),
          "the meter's factor {slope} from its last check");
    }
    if (!call.has("--scale") && text.scale != null && anyPpm()) {
      answer.taken(
          Row.aside(SCALE).set(SCALE, text.scale.factor()), "ppm on the meter's scale of {scale}");
    }
    call.withTaken(answer);
  }

  private boolean anyPpm() {
    for (int i = 0; i < call.operands().size(); i++) {
      if (text.isPpm(call.operands().get(i))) {
        return true;
      }
    }
    return false;
  }

  private void minds(Answer answer, List<EcReading> readings) {
    Object atc = meter.raw("compensates");
    if (at != null) {
      ofRaw(answer, atc);
    } else if (Boolean.FALSE.equals(atc)) {
      answer.mind(
          "not-compensated",
          "the plan's meter does not compensate: say the solution's temperature with --at.");
    }
    ofStrength(answer, readings);
  }

  private void ofStrength(Answer answer, List<EcReading> readings) {
    boolean strong = false;
    boolean natural = true;
    for (int i = 0; i < readings.size(); i++) {
      strong |= readings.get(i).tooStrong();
      natural &= readings.get(i).naturalWater();
    }
    if (at != null && by.isNaturalWater() && !natural) {
      answer.mind(
          "natural-water-range",
          "ISO 7888 is made for waters of 0.06 to 1 mS/cm, not for a feed: leave --natural-water out.");
    }
    if (strong) {
      answer.mind(
          "very-strong",
          Row.aside(MOST).set(MOST, EcReading.MOST_FOR_PLANTS),
          "over {most_mS_cm} no plant lives: is this a stock bottle, or uS/cm typed as mS/cm?");
    }
  }

  private void ofRaw(Answer answer, Object atc) {
    if (Boolean.TRUE.equals(atc)) {
      answer.mind(
          "corrected-twice",
          "the plan's meter compensates: it has done this already. Type its readings without --at.");
    } else if (atc == null) {
      answer.mind("atc", "if your meter says ATC it has done this already: type it without --at.");
    }
    if (Compensation.isCold(at)) {
      answer.mind(
          "cold",
          Row.aside(COLD).set(COLD, LinearCompensation.COLD_CELSIUS).with(EcCommand.reference()),
          "below {cold_C} a feed brought to {reference_C} reads up to 4 % high.");
    }
    if (by.isOdd()) {
      coefficient(answer, EcCommand.degree(call.us()));
    }
  }

  private void coefficient(Answer answer, double degree) {
    Row row =
        Row.aside(LEAST, MOST_PCT)
            .set(LEAST, Compensation.leastPctPer(degree))
            .set(MOST_PCT, Compensation.mostPctPer(degree));
    answer.mind(
        "coefficient",
        row,
        call.us()
            ? "meters and feeds have {least_pct} to {most_pct} % per degree Fahrenheit; --coefficient takes 1.8 times that."
            : "meters and feeds have {least_pct} to {most_pct} % per degree Celsius.");
  }

  private void next(Answer answer) {
    if (!meter.has("slope")) {
      answer.next(
          Row.aside(ROOM).set(ROOM, DESK_CELSIUS),
          "leat ec \"1.36 mS/cm\" --standard \"1.413 mS/cm\" --at \"{room_C}\"   to check the meter");
    } else if (call.hasPlan()) {
      answer.next(
          TopupAsked.isWeighed(plan)
              ? call.again("topup") + " --volume ... --ec READING"
              : call.again("dose") + " --volume ... --from READING");
    }
  }
}
