package leat.command.build;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.cli.Call;
import leat.cli.CommandErrors;
import leat.hydraulics.Bores;
import leat.hydraulics.Line;
import leat.hydraulics.Liquid;
import leat.hydraulics.PipeRun;
import leat.hydraulics.PipeSection;
import leat.hydraulics.Riser;
import leat.hydraulics.Roughness;
import leat.hydraulics.Water;
import leat.plan.Refused;
import leat.quantity.Nearest;
import leat.system.PipeOf;
import leat.system.Waterway;

/**
 * The pipes that {@code leat head} was asked for.
 *
 * @param common pipe from the pump to the manifold, or null
 * @param total flow in it, m3/s
 * @param riser of the tower
 * @param tower its number in the plan
 * @param words what was taken
 */
record HeadInput(Line common, double total, Riser riser, int tower, List<String> words) {

  static HeadInput of(Call call, double flow) {
    if (call.has("--bore") || call.has("--length")) {
      return fromFlags(call, flow);
    }
    if (!call.hasPlan()) {
      throw call.needs("--bore");
    }
    Waterway way =
        Waterway.pipes(
            call.plan(), call.quantity("--temperature"), call.quantity("--lift"), call.taken());
    int tower = tower(call, way);
    Riser riser = way.riser(tower, call.has("--lift") ? 0 : way.low());
    Double total = call.above0("--all-towers");
    List<String> words = new ArrayList<>();
    if (way.common() != null && total == null) {
      words.add("every tower takes this flow, all through the common pipe");
    }
    return new HeadInput(
        way.common(), total == null ? way.together(flow) : total, riser, tower, words);
  }

  /** The tower of a plan that --tower names; the first otherwise. */
  static int tower(Call call, Waterway way) {
    String wanted = call.text("--tower");
    List<String> names = new ArrayList<>();
    for (int t = 0; t < way.towers(); t++) {
      if (wanted == null || way.name(t).equals(wanted)) {
        return t;
      }
      names.add(way.name(t));
    }
    throw new Refused(CommandErrors.unknownWord("tower", wanted, Nearest.of(wanted, names), names));
  }

  private static HeadInput fromFlags(Call call, double flow) {
    List<Object> bores = bores(call);
    Double lift = call.quantity("--lift");
    if (lift == null) {
      throw call.needs("--lift");
    }
    accept(call, bores.size());
    List<String> words = new ArrayList<>();
    PipeSection[] sections = sections(call, bores);
    Double celsius = call.quantity("--temperature");
    Liquid water = Liquid.water(celsius == null ? Water.USUAL_CELSIUS : celsius);
    if (!call.has("--k")) {
      sections = withFittings(sections, call.values("--fitting"), water, flow, words);
    } else if (sections.length > 1) {
      words.add("--k holds every loss, those where the bore changes, too");
    }
    taken(call, words);
    return new HeadInput(null, 0, new Riser(new Line(water, sections), lift), 0, words);
  }

  private static void taken(Call call, List<String> words) {
    int ridges = call.texts("--ridges").size();
    boolean ridged = ridges == 1 || ridges == call.texts("--bore").size();
    if (!call.has("--roughness") && !ridged) {
      words.add("wall 0.0015 mm, smooth tube");
    }
    if (!call.has("--temperature")) {
      words.add("water 20 C");
    }
  }

  private static PipeSection[] sections(Call call, List<Object> bores) {
    List<Object> lengths = call.values("--length");
    List<Object> ks = call.values("--k");
    List<Object> roughnesses = call.values("--roughness");
    List<Object> ridges = call.values("--ridges");
    PipeSection[] sections = new PipeSection[bores.size()];
    for (int i = 0; i < sections.length; i++) {
      sections[i] =
          new PipeSection(
              (Double) lengths.get(i),
              (Double) bores.get(i),
              pick(roughnesses, i, Roughness.SMOOTH_TUBE),
              i < ks.size() ? (Double) ks.get(i) : 0,
              pick(ridges, i, 0));
    }
    return sections;
  }

  /** The bores; with --bores alone, the narrowest of the kind that is asked for. */
  private static List<Object> bores(Call call) {
    List<Object> bores = call.values("--bore");
    if (bores.isEmpty() && call.has("--bores")) {
      String family = call.has("--family") ? call.text("--family") : Bores.HOSE;
      bores.add(Bores.family(family, false).get(0).bore());
    } else if (bores.isEmpty()) {
      throw call.needs("--bore");
    }
    return bores;
  }

  private static void accept(Call call, int bores) {
    if (call.texts("--length").size() != bores) {
      throw new Refused(CommandErrors.notAsMany(call.command, "--length", "--bore"));
    }
    if (call.texts("--k").size() > bores) {
      throw new Refused(CommandErrors.notAsMany(call.command, "--k", "--bore"));
    }
    if (call.texts("--roughness").size() > bores) {
      throw new Refused(CommandErrors.notAsMany(call.command, "--roughness", "--bore"));
    }
    if (call.texts("--ridges").size() > bores) {
      throw new Refused(CommandErrors.notAsMany(call.command, "--ridges", "--bore"));
    }
    if (call.has("--fitting") && call.has("--k")) {
      throw new Refused(CommandErrors.notBoth(call.command, "--k", "--fitting"));
    }
  }

  /** Entrance and exit stay where the fittings name none; they and the changes are told. */
  private static PipeSection[] withFittings(
      PipeSection[] sections,
      List<Object> fittings,
      Liquid water,
      double flow,
      List<String> words) {
    double friction = new Line(water, sections).frictionFactor(sections.length - 1, flow);
    double k = PipeOf.sumOfK(fittings, sections[sections.length - 1], friction);
    PipeSection[] all = PipeRun.joined(sections);
    int last = all.length - 1;
    all[last] = all[last].withMoreK(k);
    boolean entrance = !PipeOf.namesEntrance(fittings);
    boolean exit = !PipeOf.namesExit(fittings);
    if (entrance) {
      all = PipeRun.withEntrance(all);
    }
    if (exit) {
      all = PipeRun.withExit(all);
    }
    String ends = ends(entrance, exit, fittings.isEmpty());
    if (ends != null) {
      words.add(ends);
    }
    if (sections.length > 1) {
      words.add("sudden changes of bore");
    }
    return all;
  }

  /** What is taken for the ends of the pipe, or null. */
  private static String ends(boolean entrance, boolean exit, boolean only) {
    if (entrance && exit) {
      return only
          ? "K 1.5: entrance and exit only"
          : "K 1.5 for entrance and exit besides the fittings named";
    }
    if (entrance) {
      return "K 0.5 for the entrance besides the fittings named";
    }
    return exit ? "K 1 for the exit besides the fittings named" : null;
  }

  /** The value of pipe {@code i}; one value is that of all. */
  private static double pick(List<Object> values, int i, double otherwise) {
    return values.isEmpty() ? otherwise : (Double) values.get(Math.min(i, values.size() - 1));
  }

  void taken(Answer answer) {
    answer.taken(words);
  }
}
