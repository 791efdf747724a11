package leat.stability;

import static leat.stability.Rows.same;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import leat.numeric.Impossible;
import leat.stability.Foot.Side;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class AssemblyTest {
  /** The tower of the sheet's first cases in pieces: 10 modules of 0.17 m, 150 mm, 2 pots each. */
  private static final double WIDTH = 0.15 + 0.45 / 1.7;

  private static final Tub TUB = new Tub(4, 0.6, 0.4, 0.35, 1.3, 0, Foot.box(0.4, 0.6));

  private static Column tower(GuyLines lines) {
    return tower(10, 0, lines);
  }

  private static Column tower(int modules, double tie, GuyLines lines) {
    List<Ring> rings = Collections.nCopies(modules, new Ring(0.17, 0.15, 0.003, 0.55, 2));
    return new Column(0.35, rings, 0, 0, 0.3, WIDTH, 0.1, tie, lines);
  }

  private static Assembly on(Tub tub, Column... towers) {
    return new Assembly(tub, List.of(towers), 0.3);
  }

  private static Tub heavier(double more) {
    return new Tub(
        TUB.mass() + more, 0.6, 0.4, TUB.height(), TUB.coefficient(), TUB.stand(), TUB.foot());
  }

  private static final Assembly PLAIN = on(TUB, tower(null));

  static Stream<Row> sameTower() {
    return Sheet.of("stability-overturn.csv")
        .where(
            r ->
                r.text("foot_along_wind_m").equals("0.4")
                    && r.text("tank_empty_kg").equals("4")
                    && r.text("plants_kg").equals("6")
                    && r.text("mu").equals("0.3"))
        .atLeast(17);
  }

  /** The sheet's wholes, put together here from modules, pots and plants. */
  @ParameterizedTest
  @MethodSource("sameTower")
  void wholesAgreeWithTheSheet(Row r) {
    double rho = r.num("rho_kg_m3");
    double q = Air.pressure(rho, r.num("v_gust_m_s"));
    GuyLines lines = null;
    if (r.has("guy_n")) {
      boolean toGround = r.text("guy_anchor").equals("ground");
      double ring = r.num("guy_ring_h_m") - (toGround ? 0.35 : 0);
      lines = new GuyLines((int) r.num("guy_n"), ring, r.num("guy_run_m"), toGround);
    }
    Assembly all = on(TUB, tower(lines));
    Situation state = Situation.refillMark(r.num("solution_L") * r.num("solution_kg_L"));
    same(r, all.worst(state).overturning(q), "M_over_Nm");
    same(r, all.worst(state).safety(q), "SF_overturn");
    same(r, all.worst(state).tipsAt(rho), "v_tip_m_s");
    same(r, all.slidesAt(state, rho), "v_slide_m_s");
    same(r, all.onLid(0, state).tipsAt(rho), "v_tip_lid_m_s");
    LineLoad load = all.lineLoad(0, List.of(state), q);
    same(r, load == null ? null : load.tension(), "T_EQU_N");
    same(r, load == null ? null : load.pegUplift(), "anchor_uplift_EQU_N");
  }

  /** OT05: wind on the short face. */
  @Test
  void theShortFaceIsKinder() {
    Situation state = Situation.refillMark(6);
    assertThat(PLAIN.standing(state, Side.SHORT_FACE).tipsAt(1.25))
        .isCloseTo(12.299, withPercentage(0.1));
    assertThat(PLAIN.worst(state).lever()).isEqualTo(0.2);
  }

  /** JT01, JT03: the whole stack on its lowest joint, with and without plants. */
  @Test
  void theLowestJointIsTheSheetsAndOpensFirst() {
    Situation grown = Situation.refillMark(6);
    List<Joint> joints = PLAIN.joints(0, grown);
    assertThat(joints).hasSize(10);
    assertThat(joints.get(0).height()).isEqualTo(0.35);
    assertThat(joints.get(0).opensAt(1.25)).isCloseTo(3.79529, withPercentage(0.1));
    assertThat(joints.get(0).rollsAt(1.25)).isCloseTo(5.47574, withPercentage(0.1));
    Joint young = PLAIN.joints(0, Situation.full(60)).get(0);
    assertThat(young.opensAt(1.25)).isCloseTo(3.45751, withPercentage(0.1));
    double q = Air.pressure(1.25, 15);
    double tie = joints.get(0).tieToStayShut(q);
    StackJoint both = new StackJoint(List.of(joints.get(0), young));
    assertThat(both.opensAt(1.25)).isEqualTo(young.opensAt(1.25));
    assertThat(both.rollsAt(1.25)).isEqualTo(young.rollsAt(1.25));
    assertThat(both.tieToStayShut(q)).isEqualTo(Math.max(tie, young.tieToStayShut(q)));
    assertThat(both.rolls(Air.pressure(1.25, young.rollsAt(1.25) + 0.01))).isTrue();
    assertThat(both.rolls(Air.pressure(1.25, young.rollsAt(1.25) - 0.01))).isFalse();
    assertThat(tie).isCloseTo(1648.84, withPercentage(0.1));
    Assembly tied = on(TUB, tower(10, tie + 0.01, null));
    for (Joint joint : tied.joints(0, grown)) {
      assertThat(joint.opensAt(1.25)).isGreaterThan(15);
    }
  }

  /**
   * Brute force over 3600 headings: where the resultant leaves a rectangular foot, the tank's faces
   * pushed square to themselves, the round tower along the wind.
   */
  @Property(tries = 50)
  void worstOfTheSidesIsWorstOfAllHeadings(
      @ForAll @DoubleRange(min = 0, max = 80) double litres,
      @ForAll @DoubleRange(min = 0.3, max = 1) double length,
      @ForAll @DoubleRange(min = 0.2, max = 0.8) double width) {
    Tub tub =
        new Tub(
            4,
            Math.max(length, width),
            Math.min(length, width),
            0.35,
            1.3,
            0.1,
            Foot.box(length, width));
    Assembly all = on(tub, tower(null), tower(6, 0, null));
    Situation state = Situation.refillMark(litres);
    double weight = 9.80665 * (4 + litres + 11.5 + 6 * (0.55 + 0.6));
    double high = 0.35 + 0.1;
    double round =
        (1.2 * 0.15 + 0.5 * (WIDTH - 0.15)) * (1.7 * (high + 0.85) + 1.02 * (high + 0.51));
    double least = Double.MAX_VALUE;
    for (int step = 0; step < 3600; step++) {
      double heading = 2 * Math.PI * step / 3600;
      double c = Math.abs(Math.cos(heading));
      double s = Math.abs(Math.sin(heading));
      double box = 1.3 * 0.35 * (0.1 + 0.175);
      double alongLong = s * (round + box * tub.width());
      double alongShort = c * (round + box * tub.length());
      double q =
          Math.min(
              weight * tub.length() / 2 / Math.max(1e-12, alongLong),
              weight * tub.width() / 2 / Math.max(1e-12, alongShort));
      least = Math.min(least, q);
    }
    assertThat(all.worst(state).tipsAt(1.25)).isCloseTo(Math.sqrt(2 * least / 1.25), within(1e-9));
  }

  @Property
  void moreWaterNeverTipsEarlier(
      @ForAll @DoubleRange(min = 0, max = 80) double litres,
      @ForAll @DoubleRange(min = 0, max = 80) double more) {
    Situation less = Situation.refillMark(litres);
    Situation full = less.withSolution(litres + more);
    assertThat(PLAIN.worst(full).tipsAt(1.25))
        .isGreaterThanOrEqualTo(PLAIN.worst(less).tipsAt(1.25));
    assertThat(PLAIN.slidesAt(full, 1.25)).isGreaterThanOrEqualTo(PLAIN.slidesAt(less, 1.25));
  }

  @Property
  void linesToTheTankChangeNothingAgainstTipping(
      @ForAll @IntRange(min = 3, max = 8) int n,
      @ForAll @DoubleRange(min = 0.1, max = 1.7) double ring,
      @ForAll @DoubleRange(min = 0.05, max = 2) double run,
      @ForAll @DoubleRange(min = 0, max = 80) double litres) {
    Situation state = Situation.refillMark(litres);
    Assembly tied = on(TUB, tower(new GuyLines(n, ring, run, false)));
    assertThat(tied.worst(state).tipsAt(1.25)).isEqualTo(PLAIN.worst(state).tipsAt(1.25));
    assertThat(tied.slidesAt(state, 1.25)).isEqualTo(PLAIN.slidesAt(state, 1.25));
  }

  /**
   * Lines hold at the ring what tips, the foot the rest by friction: 1.5 F - R <= mu (0.9 W + R tan
   * a), section 4 of stability-build.md, with R of the simple rule, worked out here side by side.
   */
  @Property
  void theFootHoldsByFrictionWhatLinesLeave(
      @ForAll @IntRange(min = 3, max = 6) int n,
      @ForAll @DoubleRange(min = 0.2, max = 1.7) double ring,
      @ForAll @DoubleRange(min = 0.2, max = 3) double run,
      @ForAll @DoubleRange(min = 3, max = 40) double wind,
      @ForAll @DoubleRange(min = 0, max = 60) double litres) {
    double q = Air.pressure(1.25, wind);
    Situation state = Situation.refillMark(litres);
    Assembly guyed = on(TUB, tower(new GuyLines(n, ring, run, true)));
    boolean holds = true;
    double friction = 0;
    for (Side side : Side.values()) {
      Standing alone = PLAIN.standing(state, side);
      double pull =
          Math.max(0, 1.5 * alone.overturning(q) - 0.9 * alone.righting()) / (ring + 0.35);
      double slides = 1.5 * alone.force(q) - pull;
      double presses = 0.9 * 9.80665 * PLAIN.mass(state) + pull * (ring + 0.35) / run;
      holds &= slides <= 0.3 * presses;
      friction = Math.max(friction, slides / presses);
    }
    assertThat(guyed.slideSafety(state, q) >= 1.5 / 0.9).isEqualTo(holds);
    assertThat(guyed.frictionNotToSlide(state, q)).isCloseTo(friction, within(1e-9));
  }

  /** Without lines it is the sheet's plain safety against sliding, whichever side is worse. */
  @ParameterizedTest
  @MethodSource("sameTower")
  void withoutLinesFrictionAloneHolds(Row r) {
    double q = Air.pressure(r.num("rho_kg_m3"), r.num("v_gust_m_s"));
    Situation state = Situation.refillMark(r.num("solution_L") * r.num("solution_kg_L"));
    same(r, PLAIN.slideSafety(state, q), "SF_slide");
  }

  /** What would cure it does, and a hair less does not. */
  @Property
  void curesAreSolved(
      @ForAll @DoubleRange(min = 8, max = 40) double wind,
      @ForAll @DoubleRange(min = 0, max = 60) double litres) {
    double q = Air.pressure(1.25, wind);
    Situation state = Situation.refillMark(litres);
    double keep = PLAIN.solutionToKeep(state, q);
    assertThat(PLAIN.worst(state.withSolution(keep * 1.0001)).utilisation(q))
        .isLessThanOrEqualTo(1 + 1e-9);
    if (keep > 0) {
      assertThat(PLAIN.worst(state.withSolution(keep * 0.999)).passes(q)).isFalse();
    }
    double more = PLAIN.massInFoot(state, q);
    Assembly heavy = on(heavier(more), tower(null));
    assertThat(heavy.worst(state).utilisation(q)).isLessThanOrEqualTo(1 + 1e-9);
    if (!PLAIN.worst(state).passes(q)) {
      assertThat(on(heavier(more * 0.999), tower(null)).worst(state).passes(q)).isFalse();
    }
    double still = PLAIN.massNotToSlide(state, q);
    Standing broad = on(heavier(still), tower(null)).standing(state, Side.LONG_FACE);
    assertThat(broad.slideSafety(q, 0, 0)).isGreaterThanOrEqualTo(1.5 / 0.9 - 1e-9);
  }

  @Test
  void fewerModulesMayPass() {
    Situation state = Situation.refillMark(30);
    double q = Air.pressure(1.25, 15);
    int count = PLAIN.modulesToPass(0, state, q);
    assertThat(count).isBetween(1, 9);
    assertThat(on(TUB, tower(count, 0, null)).worst(state).passes(q)).isTrue();
    assertThat(on(TUB, tower(count + 1, 0, null)).worst(state).passes(q)).isFalse();
    assertThat(PLAIN.modulesToPass(0, Situation.refillMark(0), Air.pressure(1.25, 60))).isNull();
  }

  /** Two equal guyed towers share alike, and their rings together hold what the whole leaves. */
  @Test
  void severalTowersShareTheirLines() {
    GuyLines lines = new GuyLines(4, 1.25, 1.2, true);
    Situation state = Situation.refillMark(6);
    double q = Air.pressure(1.25, 25);
    Assembly two = on(TUB, tower(lines), tower(lines));
    Standing worst = two.standing(state, Side.LONG_FACE);
    double left = 1.5 * worst.overturning(q) - 0.9 * worst.righting();
    LineLoad one = two.lineLoad(0, List.of(state), q);
    LineLoad other = two.lineLoad(1, List.of(state), q);
    assertThat((one.ringPull() + other.ringPull()) * 1.6).isCloseTo(left, within(1e-9));
    assertThat(one.tension()).isEqualTo(other.tension());
    Assembly oneGuyed = on(TUB, tower(lines), tower(null));
    assertThat(oneGuyed.lineLoad(0, List.of(state), q).moment()).isCloseTo(left, within(1e-9));
    assertThat(oneGuyed.lineLoad(1, List.of(state), q)).isNull();
  }

  /** A full tank stands by itself at 15 m/s, the tower on its lid does not: OT11's 85.0568 N m. */
  @Test
  void linesToTheGroundMayHoldTheTowerOnItsLid() {
    GuyLines lines = new GuyLines(3, 1.25, 1.2, true);
    Situation grown = Situation.refillMark(6);
    LineLoad load = on(TUB, tower(lines)).lineLoadOnLid(0, List.of(grown), Air.pressure(1.25, 15));
    assertThat(load.ringPull()).isCloseTo(85.0568 / 1.25, withPercentage(0.1));
    assertThat(load.pegLevel()).isCloseTo(1.1547 * 85.0568 / 1.25, withPercentage(0.1));
    GuyLines tied = new GuyLines(3, 1.25, 1.2, false);
    assertThat(on(TUB, tower(tied)).lineLoadOnLid(0, List.of(grown), 100)).isNull();
    assertThat(PLAIN.lineLoadOnLid(0, List.of(grown), 100)).isNull();
  }

  @Property
  void theRingNamedKeepsTheLineWhole(
      @ForAll @DoubleRange(min = 50, max = 1000) double tension, @ForAll boolean toGround) {
    GuyLines lines = new GuyLines(3, 1.2, 1.2, toGround);
    List<Situation> states = List.of(Situation.refillMark(6));
    double q = Air.pressure(1.25, 20);
    LineLoad load = on(TUB, tower(lines)).lineLoad(0, states, q);
    Double ring = on(TUB, tower(lines)).ringToPass(0, load, tension);
    if (ring != null && ring > 0) {
      Assembly cured = on(TUB, tower(new GuyLines(3, ring, 1.2, toGround)));
      assertThat(cured.lineLoad(0, states, q).tension()).isCloseTo(tension, within(1e-6 * tension));
    } else if (ring == null) {
      Assembly most = on(TUB, tower(new GuyLines(3, 1.7, 1.2, toGround)));
      assertThat(most.lineLoad(0, states, q).tension()).isGreaterThan(tension);
    }
  }

  /** A tower that reaches into the tank does not stand on its lid, and its foot meets no wind. */
  @Test
  void aTowerOnTheTanksFloorHasNoLidToTipOn() {
    Column deep =
        new Column(
            0,
            Collections.nCopies(10, new Ring(0.17, 0.15, 0.003, 0.55, 2)),
            0,
            0,
            0.3,
            WIDTH,
            0.1,
            0,
            null);
    Situation state = Situation.refillMark(6);
    Assembly all = on(TUB, deep);
    assertThat(all.onLid(0, state)).isNull();
    Standing s = all.standing(state, Side.LONG_FACE);
    double perMetre = 1.2 * 0.15 + 0.5 * (WIDTH - 0.15);
    assertThat(s.overturning(1))
        .isCloseTo(1.3 * 0.21 * 0.175 + perMetre * 1.35 * (0.35 + 0.675), within(1e-9));
  }

  @Test
  void aSquatTubIsSaid() {
    Tub wide = new Tub(4, 3, 3, 0.35, 1.3, 0, Foot.round(3));
    assertThat(on(wide, tower(null)).squat()).isTrue();
    assertThat(PLAIN.squat()).isFalse();
  }

  /** Values of the sheet, section 3. */
  @Test
  void groundsFriction() {
    assertThat(Ground.friction("steel")).isEqualTo(0.15);
    assertThat(Ground.friction("anti-slip-mat")).isEqualTo(0.6);
    assertThat(Ground.friction("wet-plastic")).isEqualTo(0.2);
    assertThat(Ground.friction("moss")).isNull();
    for (String word : Ground.words()) {
      assertThat(Ground.friction(word)).isBetween(0.15, 0.6);
    }
  }

  @Test
  void refusesWhatCannotStand() {
    refused(() -> tower(new GuyLines(3, 1.71, 1, true)), "ring");
    refused(() -> new Ring(0.17, 0, 0.003, 0.5, 3), "module diameter");
    refused(() -> new Ring(0.17, 0.15, 0.003, 0, 3), "module mass");
    refused(() -> new Column(0, List.of(), 0, 0, 0, 0, null, 0, null), "modules");
    refused(() -> new Assembly(TUB, List.of(), 0.3), "towers");
    refused(() -> on(TUB).mass(new Situation("x", -1, 1)), "towers");
    refused(() -> new Situation("x", -1, 1), "solution");
    refused(() -> new Situation("x", 1, 1.1), "growth");
    Column noFoot =
        new Column(
            0.35,
            List.of(new Ring(0.17, 0.15, 0, 0.5, 2)),
            0,
            0,
            0,
            0,
            null,
            0,
            new GuyLines(3, 0.1, 1, false));
    refused(() -> on(TUB, noFoot).lineLoad(0, List.of(Situation.full(1)), 100), "foot radius");
  }

  private static void refused(Runnable what, String quantity) {
    assertThatThrownBy(what::run)
        .isInstanceOfSatisfying(
            Impossible.class, e -> assertThat(e.quantity()).isEqualTo(quantity));
  }
}
