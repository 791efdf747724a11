package leat.command.build;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.CommandErrors;
import leat.cli.Flag;
import leat.command.feed.MixErrors;
import leat.plan.Kind;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.plan.Section;
import leat.quantity.Dimension;
import leat.quantity.TankState;
import leat.stability.SiteWind;
import leat.stability.Situation;
import leat.system.StandingOf;
import leat.system.WindOf;

/** {@code leat wind}: will it stand. */
public final class WindCommand extends Command {
  private static final Kind LENGTH = Kind.quantity(Dimension.LENGTH);
  private static final Kind SPEED = Kind.quantity(Dimension.SPEED);
  private static final Kind MASS = Kind.quantity(Dimension.MASS);

  /** Flags of the sum without a plan, which a plan answers by its keys. */
  private static final String[] SUM = {
    "--mass",
    "--foot",
    "--face",
    "--lid",
    "--tower",
    "--foot-radius",
    "--lines",
    "--ring",
    "--run",
    "--anchor"
  };

  private static final Flag[] FLAGS = {
    Flag.of(
            "--state",
            "VOLUME @ SHARE",
            Kind.STATE,
            "30 L @ 60 %",
            "another state: solution in the tank, and how far the plants are grown")
        .repeatable(),
    Flag.of("--gust", "SPEED", SPEED, "23 m/s", "gust at the tower, instead of the plan's wind"),
    Flag.of(
        "--mean",
        "SPEED",
        SPEED,
        "18 m/s",
        "mean wind of 10 min at 10 m in open country, instead of the plan's wind"),
    Flag.of(
            "--terrain",
            "WORD",
            Kind.choice(leat.stability.Terrain.words()),
            "city",
            "ground around")
        .sets("site.terrain"),
    Flag.of(
            "--height-above-ground",
            "LENGTH",
            LENGTH,
            "13 m",
            "height of the place above the street")
        .sets("site.height_above_ground"),
    Flag.of(
            "--density",
            "DENSITY",
            Kind.quantity(Dimension.MASS_CONCENTRATION),
            "1.20 kg/m3",
            "density of the air, 1.25 kg/m3 otherwise")
        .sets("site.air_density"),
    Flag.of("--friction", "NUMBER", Kind.NUMBER, "0.3", "friction of the foot on the ground")
        .sets("tank.friction"),
    Flag.of("--mass", "MASS", MASS, "75 kg", "without a plan: mass of all, tank and towers"),
    Flag.of("--foot", "LENGTH", LENGTH, "0.40 m", "the foot's size along the wind"),
    Flag.of(
            "--face",
            "AREA @ HEIGHT x CF",
            Kind.FACE,
            "0.255 m2 @ 1.2 m x 1.2",
            "what the wind meets: area, height of its centre, drag coefficient")
        .repeatable(),
    Flag.of("--lid", "LENGTH", LENGTH, "0.35 m", "height of the lid that a tower stands on"),
    Flag.of("--tower", "MASS", MASS, "11 kg", "mass of tower and plants on the lid"),
    Flag.of("--foot-radius", "LENGTH", LENGTH, "0.1 m", "radius of the tower's foot on the lid"),
    Flag.of("--lines", "N", Kind.COUNT, "3", "guy lines, evenly round"),
    Flag.of("--ring", "LENGTH", LENGTH, "1.7 m", "height of their ring over the anchors"),
    Flag.of("--run", "LENGTH", LENGTH, "1.5 m", "distance of the anchors from the axis"),
    Flag.of(
        "--anchor",
        "WORD",
        Kind.choice("ground", "tank"),
        "ground",
        "what the lines are tied to, the ground otherwise"),
  };

  @Override
  public String name() {
    return "wind";
  }

  @Override
  public Flag[] flags() {
    return FLAGS;
  }

  @Override
  public boolean draws() {
    return true;
  }

  @Override
  public Answer answer(Call call) {
    if (call.has("--gust") && call.has("--mean")) {
      throw new Refused(CommandErrors.notBoth(this, "--gust", "--mean"));
    }
    String sum = ofSum(call);
    if (sum != null && call.namesPlan()) {
      throw new Refused(CommandErrors.notBoth(this, sum, "a plan"));
    }
    if (sum != null) {
      return new WindSum(call).answer();
    }
    if (!call.hasPlan()) {
      throw new Refused(
          CommandErrors.neededOneOf(
              this, "a plan is needed, or bare numbers: --mass, --foot, --gust and --face"));
    }
    Plan plan = call.plan();
    StandingOf standing = standing(call, plan);
    return new WindAnswer(call, plan, standing, wind(call, plan.section("site"))).answer();
  }

  private static StandingOf standing(Call call, Plan plan) {
    if (!call.has("--state")) {
      return StandingOf.of(plan, call.taken());
    }
    StandingOf standing = StandingOf.of(plan, states(call), call.taken());
    double capacity = standing.tank().capacity();
    for (int i = 0; i < standing.states().size(); i++) {
      if (standing.states().get(i).volume() > capacity) {
        String typed = call.texts("--state").get(i);
        throw new Refused(MixErrors.overTheRim("--state", typed, capacity, call.us()));
      }
    }
    return standing;
  }

  /** The first flag of a sum without a plan, or null. */
  private static String ofSum(Call call) {
    for (int i = 0; i < SUM.length; i++) {
      if (call.has(SUM[i])) {
        return SUM[i];
      }
    }
    return null;
  }

  /** The wind of the flags, else of the plan. */
  static SiteWind wind(Call call, Section site) {
    Double gust = call.from0("--gust");
    Double mean = call.from0("--mean");
    if (gust != null) {
      return WindOf.ofGust(site, gust, call.taken());
    }
    return mean != null ? WindOf.ofMean(site, mean, call.taken()) : WindOf.of(site, call.taken());
  }

  private static List<Situation> states(Call call) {
    List<Object> asked = call.values("--state");
    List<Situation> states = new ArrayList<>();
    for (int i = 0; i < asked.size(); i++) {
      TankState state = (TankState) asked.get(i);
      states.add(
          new Situation(
              call.texts("--state").get(i),
              Situation.massOf(state.volume().value()),
              state.grown().value()));
    }
    return states;
  }
}
