package leat.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import leat.answer.Column;
import leat.check.Rule;
import leat.check.Rules;
import leat.cli.Command;
import leat.cli.Declared;
import leat.cli.Flag;
import leat.command.Commands;
import leat.plan.Key;
import leat.plan.Keys;
import leat.plan.Kind;
import leat.plan.KindReader;
import org.junit.jupiter.api.Test;

/** Commands, flags, columns, keys and rules are declared once, wholly, and alike. */
class DeclarationsTest {
  /** Named in help before their classes came. */
  private static final Set<String> TO_COME = Set.of("pump", "plan");

  /** Names that the contract fixes otherwise. */
  private static final Set<String> FIXED_NAMES =
      Set.of(
          "energy_kwh",
          "print_h_each",
          "litres",
          "litres_low",
          "litres_high",
          "use_L_day",
          "use_low_L_day",
          "use_high_L_day",
          "kwh_day",
          "kwh_total",
          "saving_kwh",
          "grams",
          "kwh",
          "cost_day",
          "cost_total",
          "cost",
          "starts_per_day",
          "ppm500",
          "ppm640",
          "ppm700");

  /**
   * Words that the contract gives to two trades: full is a level of the tank and the litres of a
   * top-up, from and to are dates of a period and the EC of a dose, at is a temperature and a mark
   * of the tank.
   */
  private static final Set<String> ONE_WORD_TWO_TRADES =
      Set.of(
          "--top",
          "--dipstick",
          "--days",
          "--rows",
          "--at",
          "--volume",
          "--full",
          "--empty",
          "--every",
          "--first",
          "--from",
          "--reading",
          "--to",
          "--tower",
          "--run",
          "--sun");

  @Test
  void everyCommandCanBeCalled() {
    Set<String> names = new HashSet<>();
    for (Command command : Declared.commands()) {
      Command listed = Declared.listed(command.name());
      assertThat(listed).as("Commands builds %s", command.name()).isNotNull();
      assertThat(listed.getClass()).isEqualTo(command.getClass());
      assertThat(Declared.group(command)).as("group of %s", command.name()).isNotNull();
      assertThat(names.add(command.name())).as(command.name()).isTrue();
      assertThat(command.summary()).as(command.name()).isNotBlank().doesNotEndWith(".");
    }
    for (String name : new Commands().names()) {
      assertThat(names.contains(name) || TO_COME.contains(name)).as(name).isTrue();
    }
  }

  @Test
  void everyFlagIsWhole() {
    for (Command command : Declared.commands()) {
      Set<String> names = new HashSet<>();
      for (Flag flag : Declared.allFlags(command)) {
        String where = command.name() + " " + flag.name();
        assertThat(flag.name()).as(where).matches("--[a-z][a-z0-9-]*");
        assertThat(flag.meaning()).as(where).isNotBlank();
        for (String name : new String[] {flag.name(), flag.shortName(), flag.alias()}) {
          assertThat(name == null || names.add(name)).as("%s: %s once", where, name).isTrue();
        }
        if (flag.label() != null) {
          assertThat(flag.example()).as(where).isNotBlank();
          assertThat(KindReader.read(flag.kind(), flag.name(), flag.example())).isNotNull();
        }
      }
    }
  }

  @Test
  void flagsOfOneNameAreAlike() {
    Map<String, String> types = new HashMap<>();
    Map<String, String> shorts = new HashMap<>();
    List<String> unlike = new ArrayList<>();
    for (Command command : Declared.commands()) {
      for (Flag flag : Declared.allFlags(command)) {
        String type = type(flag.kind());
        String before = types.putIfAbsent(flag.name(), type);
        if (before != null && !before.equals(type) && !ONE_WORD_TWO_TRADES.contains(flag.name())) {
          unlike.add(
              flag.name() + " of " + command.name() + " is " + type + ", elsewhere " + before);
        }
        if (flag.shortName() != null) {
          String long1 = shorts.putIfAbsent(flag.shortName(), flag.name());
          assertThat(long1 == null || long1.equals(flag.name())).as(flag.shortName()).isTrue();
        }
      }
    }
    assertThat(unlike).isEmpty();
  }

  private static String type(Kind kind) {
    if (kind == null) {
      return "a switch";
    }
    if (kind.words() != null) {
      return "a choice";
    }
    return kind.dimension() != null ? kind.dimension().name() : kind.word();
  }

  @Test
  void flagsOfKeysAreLikeTheirKeys() {
    for (Command command : Declared.commands()) {
      for (Flag flag : Declared.allFlags(command)) {
        if (flag.planPath() != null) {
          Key key = find(flag.planPath());
          assertThat(key).as("%s sets %s", flag.name(), flag.planPath()).isNotNull();
          assertThat(type(flag.kind())).as(flag.planPath()).isEqualTo(type(key.kind()));
          assertThat(flag.isRepeatable())
              .as(flag.name())
              .isEqualTo(key.shape() == Key.Shape.LIST || key.shape() == Key.Shape.NAMED);
        }
      }
    }
  }

  /** The key at a path whose list places are left open or numbered, or null. */
  private static Key find(String path) {
    Key key = Keys.PLAN;
    for (String part : path.split("\\.")) {
      key = key == null ? null : key.find(part.replaceAll("\\[.*?]", ""));
    }
    return key;
  }

  @Test
  void keysOfPlansAreWhole() {
    keys(Keys.PLAN, "");
  }

  private static void keys(Key section, String path) {
    Set<String> names = new HashSet<>();
    for (Key key : section.keys()) {
      String here = path + key.name();
      assertThat(names.add(key.name())).as("%s once", here).isTrue();
      assertThat(key.name()).as(here).matches("[a-z][a-z0-9_]*");
      assertThat(key.meaning()).as(here).isNotBlank();
      if (key.keys().length > 0) {
        keys(key, here + ".");
      } else {
        assertThat(key.example()).as(here).isNotBlank();
      }
    }
  }

  /** The static columns of all classes of commands. */
  static List<Column> columns() throws IllegalAccessException {
    List<Column> all = new ArrayList<>();
    for (Class<?> type : Declared.classesBelow("leat.command")) {
      for (Field field : type.getDeclaredFields()) {
        if (Modifier.isStatic(field.getModifiers()) && field.getType() == Column.class) {
          field.setAccessible(true);
          all.add((Column) field.get(null));
        }
      }
    }
    assertThat(all).hasSizeGreaterThan(20);
    return all;
  }

  @Test
  void columnsEndInTheirUnit() throws IllegalAccessException {
    for (Column column : columns()) {
      assertThat(column.key()).matches("[A-Za-z][A-Za-z0-9_]*");
      assertThat(column.label()).as(column.key()).isNotBlank();
      if (column.show() != null
          && !column.show().metric().key().isEmpty()
          && !FIXED_NAMES.contains(column.key())) {
        assertThat("_" + column.key()).endsWith("_" + column.show().metric().key());
      }
    }
  }

  @Test
  void everyRuleIsListedAndWhole() {
    Set<String> listed = new HashSet<>();
    Set<String> ids = new HashSet<>();
    for (Rule rule : Rules.all()) {
      listed.add(rule.getClass().getName());
      assertThat(ids.add(rule.id())).as("%s once", rule.id()).isTrue();
      assertThat(rule.id()).matches("[a-z]+(-[a-z0-9]+)*");
      assertThat(rule.meaning()).as(rule.id()).isNotBlank();
      assertThat(rule.need()).as(rule.id()).isNotBlank();
      assertThat(rule.source()).as(rule.id()).isNotBlank();
      for (String key : rule.reads().split(" ")) {
        assertThat(find(key)).as("%s reads %s", rule.id(), key).isNotNull();
      }
    }
    for (Class<?> type : Declared.classesBelow("leat.check")) {
      if (Rule.class.isAssignableFrom(type) && !Modifier.isAbstract(type.getModifiers())) {
        assertThat(listed.contains(type.getName()))
            .as("%s stands in its room's list; is it gone? mvn -B -q clean", type.getName())
            .isTrue();
      }
    }
  }
}
