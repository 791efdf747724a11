package leat.system;

import java.util.ArrayList;
import java.util.List;
import leat.plan.Plan;
import leat.plan.Problem;
import leat.plan.Section;
import leat.season.Batches;
import leat.season.PotUse;

/** The pots of a plan's towers, and the crops in each. */
public final class PotsOf {
  private final List<String> names = new ArrayList<>();
  private final List<Integer> pots = new ArrayList<>();

  private PotsOf(Plan plan) {
    List<Section> towers = plan.root().sections("towers");
    for (int i = 0; i < towers.size(); i++) {
      names.add(towers.get(i).text("name"));
      pots.add(pots(towers.get(i)));
    }
  }

  /** The pots of a plan. */
  public static PotsOf of(Plan plan) {
    return new PotsOf(plan);
  }

  private static Integer pots(Section tower) {
    List<Section> modules = tower.sections("modules");
    int sum = 0;
    for (int i = 0; i < modules.size(); i++) {
      Double each = modules.get(i).maybe("pots");
      Double count = modules.get(i).maybe("count");
      if (each == null) {
        return null;
      }
      sum += each.intValue() * (count == null ? 1 : count.intValue());
    }
    int equal = tower.countOr("count", 1);
    return modules.isEmpty() ? null : Integer.valueOf(sum * equal);
  }

  /** The place where a crop grows: its tower, or the only one, or all of them. */
  private int place(Sown crop) {
    int at = crop.tower() == null ? -1 : names.indexOf(crop.tower());
    return at < 0 && names.size() == 1 ? 0 : at;
  }

  /** Crops that stand in the same tower, tower by tower; those of no known tower together. */
  public List<List<Sown>> together(List<Sown> crops) {
    List<List<Sown>> all = new ArrayList<>();
    for (int place = -1; place < names.size(); place++) {
      List<Sown> here = new ArrayList<>();
      for (int i = 0; i < crops.size(); i++) {
        if (place(crops.get(i)) == place) {
          here.add(crops.get(i));
        }
      }
      if (!here.isEmpty()) {
        all.add(here);
      }
    }
    return all;
  }

  /** The use of pots of crops that stand together. */
  public static PotUse use(List<Sown> crops) {
    List<Batches> batches = new ArrayList<>();
    for (int i = 0; i < crops.size(); i++) {
      batches.add(crops.get(i).batches());
    }
    return PotUse.of(batches);
  }

  /** What is wrong when a tower has more plants than pots on a day; null when none has. */
  public static Problem overfull(Plan plan, List<Sown> crops) {
    PotsOf all = of(plan);
    List<List<Sown>> towers = all.together(crops);
    for (int i = 0; i < towers.size(); i++) {
      List<Sown> here = towers.get(i);
      int place = all.place(here.get(0));
      Integer has = place < 0 ? null : all.pots.get(place);
      PotUse.Overfull over = has == null ? null : use(here).over(has);
      if (over != null) {
        Sown last = here.get(here.size() - 1);
        String where = all.names.get(place) == null ? "the tower" : "tower " + all.names.get(place);
        return SeasonErrors.overfull(
            plan.root().sections("crops").get(last.index()),
            where,
            over.day().toString(),
            over.taken(),
            over.pots());
      }
    }
    return null;
  }
}
