package leat.system;

import java.util.ArrayList;
import java.util.List;
import leat.plan.Named;
import leat.plan.Plan;
import leat.plan.Section;
import leat.quantity.Nearest;
import leat.solution.IonName;
import leat.solution.Ions;
import leat.solution.Salt;
import leat.solution.Salts;

/** The salts one can weigh with a plan, its own ones included, and the ions of its water. */
public final class SaltsOf {
  private SaltsOf() {}

  /**
   * The salts of {@code feed.salts}. One of the table's names without elements is that salt, with
   * its price.
   */
  public static List<Salt> own(Plan plan) {
    List<Section> sections = plan.section("feed").sections("salts");
    List<Salt> salts = new ArrayList<>();
    for (int i = 0; i < sections.size(); i++) {
      salts.add(own(sections.get(i)));
    }
    return salts;
  }

  private static Salt own(Section section) {
    String name = (String) section.needRaw("name");
    Named elements = section.named("elements");
    Double price = section.maybe("price");
    Salt listed = Salts.find(name);
    if (elements.size() == 0 && listed != null) {
      return price == null ? listed : listed.withPrice(price);
    }
    Salt salt = LabelsOf.label(section, "elements", name).asSalt(name);
    return price == null ? salt : salt.withPrice(price);
  }

  /** The salt of a name: the plan's own first, then the table's; null when there is none. */
  public static Salt find(Plan plan, String name) {
    List<Salt> own = own(plan);
    for (int i = 0; i < own.size(); i++) {
      if (own.get(i).name().equals(name)) {
        return own.get(i);
      }
    }
    return Salts.find(name);
  }

  /** Names of all salts, the plan's own first. */
  public static List<String> names(Plan plan) {
    List<Salt> own = own(plan);
    List<String> names = new ArrayList<>();
    for (int i = 0; i < own.size(); i++) {
      names.add(own.get(i).name());
    }
    String[] table = Salts.names();
    for (int i = 0; i < table.length; i++) {
      if (!names.contains(table[i])) {
        names.add(table[i]);
      }
    }
    return names;
  }

  /** The salts that a name begins, quoted, else the nearest; empty for none. */
  public static String meant(String typed, List<String> names) {
    String begun = typed.strip().toLowerCase(java.util.Locale.ROOT).replace(' ', '-') + "-";
    String meant = "";
    for (int i = 0; i < names.size(); i++) {
      if (names.get(i).startsWith(begun)) {
        meant += (meant.isEmpty() ? "\"" : " or \"") + names.get(i) + "\"";
      }
    }
    String near = meant.isEmpty() ? Nearest.of(typed, names) : null;
    return near == null ? meant : "\"" + near + "\"";
  }

  private static final String[] KEYS = {
    "nitrate", "phosphorus", "potassium", "calcium", "magnesium", "sulfate", "sodium", "chloride"
  };
  private static final String[] IONS = {
    "nitrate", "P", "potassium", "calcium", "magnesium", "sulfate", "sodium", "chloride"
  };

  /** Whether the plan's water names any ion or its alkalinity. */
  public static boolean hasWater(Plan plan) {
    Section water = plan.section("water");
    for (int i = 0; i < KEYS.length; i++) {
      if (water.has(KEYS[i])) {
        return true;
      }
    }
    return water.has("alkalinity");
  }

  /**
   * The ions of the plan's water, mmol/L; what it does not name counts as none, but bicarbonate
   * closes the charges where the alkalinity is not named.
   */
  public static Ions water(Plan plan) {
    Section water = plan.section("water");
    Ions ions = Ions.NONE;
    for (int i = 0; i < KEYS.length; i++) {
      Double mgPerL = water.maybe(KEYS[i]);
      if (mgPerL != null) {
        ions = ions.andMilligrams(IonName.of(IONS[i]), mgPerL);
      }
    }
    Double alkalinity = water.maybe("alkalinity");
    return alkalinity == null ? ions.closedByBicarbonate() : ions.andAlkalinity(alkalinity);
  }
}
