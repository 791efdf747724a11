package leat.system;

import java.util.ArrayList;
import java.util.List;
import leat.numeric.Impossible;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.plan.Section;
import leat.solution.Crop;
import leat.solution.Crops;

/** The crops of a plan with their bands of EC and pH: the plan's own, else the table's. */
public final class CropsOf {
  private static final String[] BAND = {"ec_low", "ec_high", "ph_low", "ph_high"};

  private CropsOf() {}

  /** The crop of an entry; null when the table lacks it and the plan gives no band. */
  public static Crop of(Section entry) {
    String name = (String) entry.needRaw("name");
    boolean own = false;
    for (int i = 0; i < BAND.length; i++) {
      own |= entry.has(BAND[i]);
    }
    if (!own) {
      return Crops.find(name);
    }
    try {
      return new Crop(
          name,
          entry.need("ec_low"),
          entry.need("ec_high"),
          entry.need("ph_low"),
          entry.need("ph_high"),
          "the plan",
          "own");
    } catch (Impossible e) {
      throw new Refused(entry.problem("name", "bad-band", name + ": " + e.getMessage()));
    }
  }

  /** Entries whose crop nobody knows a band of. */
  public static List<Section> unknown(Plan plan) {
    List<Section> entries = plan.root().sections("crops");
    List<Section> unknown = new ArrayList<>();
    for (int i = 0; i < entries.size(); i++) {
      if (of(entries.get(i)) == null) {
        unknown.add(entries.get(i));
      }
    }
    return unknown;
  }

  /** The crops that have a band, each once. */
  public static List<Crop> known(Plan plan) {
    List<Section> entries = plan.root().sections("crops");
    List<Crop> crops = new ArrayList<>();
    for (int i = 0; i < entries.size(); i++) {
      Crop crop = of(entries.get(i));
      boolean there = crop == null;
      for (int j = 0; j < crops.size() && !there; j++) {
        there = crops.get(j).name().equals(crop.name());
      }
      if (!there) {
        crops.add(crop);
      }
    }
    return crops;
  }
}
