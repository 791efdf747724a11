package leat.system;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import leat.plan.Named;
import leat.plan.Problem;
import leat.plan.Section;
import leat.quantity.Nearest;

/**
 * Messages about timings, tariffs and periods, one named method each; the error gallery holds an
 * entry for each.
 */
public final class DutyErrors {
  private DutyErrors() {}

  /** An entry that later ones cover, or that no day has. */
  public static Problem neverInForce(Section entry, String key) {
    return entry.problem(
        key,
        "never-in-force",
        "this entry never holds: a later one covers all of it, and the last that matches wins");
  }

  /** A time zone nobody knows. */
  public static Problem unknownZone(Section site, String typed) {
    List<String> names = new ArrayList<>(ZoneId.getAvailableZoneIds());
    String near = nearestZone(typed, names);
    return site.problem(
        "time_zone",
        "unknown-zone",
        "no time zone \""
            + typed
            + "\""
            + (near == null
                ? "; zones are named by region and city, such as \"Europe/Vienna\""
                : "; did you mean \"" + near + "\"?"));
  }

  /** Cities that their own language writes otherwise than the list of zones does. */
  private static final String[][] CITIES = {
    {"Wien", "Vienna"},
    {"Rom", "Rome"},
    {"Roma", "Rome"},
    {"Prag", "Prague"},
    {"Praha", "Prague"},
    {"Warschau", "Warsaw"},
    {"Warszawa", "Warsaw"},
    {"Kopenhagen", "Copenhagen"},
    {"Br\u00fcssel", "Brussels"},
    {"Bruxelles", "Brussels"},
    {"Lissabon", "Lisbon"},
    {"Lisboa", "Lisbon"},
    {"Athen", "Athens"},
    {"Bukarest", "Bucharest"},
    {"Genf", "Zurich"},
    {"Z\u00fcrich", "Zurich"},
    {"M\u00fcnchen", "Berlin"},
    {"Hamburg", "Berlin"},
  };

  private static String inEnglish(String zone) {
    String city = zone.substring(zone.lastIndexOf('/') + 1);
    for (int i = 0; i < CITIES.length; i++) {
      if (CITIES[i][0].equalsIgnoreCase(city)) {
        return CITIES[i][1];
      }
    }
    return zone;
  }

  private static String nearestZone(String typed, List<String> names) {
    String wanted = inEnglish(typed.replace(' ', '_'));
    for (int i = 0; i < names.size(); i++) {
      String name = names.get(i);
      int slash = name.lastIndexOf('/');
      if (name.equalsIgnoreCase(wanted) || name.substring(slash + 1).equalsIgnoreCase(wanted)) {
        return name;
      }
    }
    String near = Nearest.of(wanted, names);
    if (near != null) {
      return near;
    }
    List<String> cities = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      cities.add(names.get(i).substring(names.get(i).lastIndexOf('/') + 1));
    }
    String city = Nearest.of(wanted.substring(wanted.lastIndexOf('/') + 1), cities);
    return city == null ? null : names.get(cities.indexOf(city));
  }

  /** A period of parts of days where clock and calendar decide. */
  public static Problem wholeDays(String typed) {
    return new Problem(
        "whole-days",
        null,
        "--days",
        "where the timing or the price changes by the clock a period has whole days; got \""
            + typed
            + "\"");
  }

  /** A limit in money that is in another currency than the plan's prices. */
  public static Problem limitCurrency(Named limits, int i, String one, String other) {
    return limits.problem(
        i,
        "limits",
        "limit-currency",
        "this limit is in " + other + ", the plan's prices in " + one);
  }
}
