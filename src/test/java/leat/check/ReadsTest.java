package leat.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leat.plan.KeyPath;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.plan.Source;
import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import org.yaml.snakeyaml.nodes.Tag;
import org.yaml.snakeyaml.representer.Representer;
import org.yaml.snakeyaml.resolver.Resolver;

/**
 * What a rule reads, measured: in plans of every kind each value is taken away or changed, and a
 * key counts as read by a rule when one of its findings becomes another. Each rule's own list must
 * name just those keys.
 */
class ReadsTest {
  private static final List<String> EXAMPLES =
      List.of(
          "first-tower.yaml",
          "proud-tower.yaml",
          "terrace.yaml",
          "hard-water.yaml",
          "night-rate.yaml",
          "sender-tub.yaml",
          "poured-tub.yaml",
          "weighed-salts.yaml",
          "roof.yaml",
          "stacked.yaml",
          "kitchen.yaml");

  private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

  /** Words that stand for a choice; tried where one stands in a plan. */
  private static final List<String> WORDS =
      List.of(
          "true",
          "false",
          "none",
          "gust",
          "open",
          "wet",
          "tank",
          "ball",
          "pvc",
          "silicone",
          "low",
          "high",
          "bottom",
          "top");

  /** YAML whose scalars are all texts, so that they are written back as they were. */
  private static Yaml yaml() {
    DumperOptions dump = new DumperOptions();
    dump.setDefaultFlowStyle(DumperOptions.FlowStyle.BLOCK);
    dump.setWidth(10_000);
    LoaderOptions load = new LoaderOptions();
    Resolver texts =
        new Resolver() {
          @Override
          protected void addImplicitResolvers() {
            addImplicitResolver(Tag.MERGE, MERGE, "<");
          }
        };
    return new Yaml(new SafeConstructor(load), new Representer(dump), dump, load, texts);
  }

  @Test
  void eachRuleNamesWhatItReads() throws Exception {
    Map<String, TreeSet<String>> read = new LinkedHashMap<>();
    for (Rule rule : Rules.all()) {
      read.put(rule.id(), new TreeSet<>());
    }
    for (String name : EXAMPLES) {
      vary(Files.readString(Path.of("examples", name)), read);
    }
    for (File own : new File("src/test/resources/plans/rules").listFiles()) {
      vary(Files.readString(own.toPath()), read);
    }
    List<String> wrong = new ArrayList<>();
    for (Rule rule : Rules.all()) {
      TreeSet<String> unsaid = new TreeSet<>(read.get(rule.id()));
      for (String said : rule.reads().split(" ")) {
        if (read.get(rule.id()).stream().noneMatch(key -> covers(said, key))) {
          wrong.add(rule.id() + " does not read " + said);
        }
        unsaid.removeIf(key -> covers(said, key));
      }
      // A limit of one's own is every rule's, and stands in no list.
      unsaid.remove("limits");
      unsaid.forEach(key -> wrong.add(rule.id() + " reads " + key + ", too"));
    }
    assertThat(wrong).isEmpty();
  }

  private static boolean covers(String said, String key) {
    return key.equals(said) || key.startsWith(said + ".") || key.startsWith(said + "[]");
  }

  private static void vary(String text, Map<String, TreeSet<String>> read) {
    Object root = copy(yaml().load(text));
    Map<String, String> before = findings(dump(root));
    assertThat(before).as(dump(root)).isNotEmpty();
    leaves(root, "", (path, holder, key) -> changed(root, path, holder, key, before, read));
  }

  /** Clock times and the words on and off must stand in quotes. */
  private static String dump(Object root) {
    return yaml().dump(root).replaceAll("(?m): (\\d\\d:\\d\\d|on|off)$", ": \"$1\"");
  }

  /** Without anchors: each alias becomes a value of its own. */
  private static Object copy(Object node) {
    if (node instanceof Map<?, ?> map) {
      Map<Object, Object> copy = new LinkedHashMap<>();
      map.forEach((key, value) -> copy.put(key, copy(value)));
      return copy;
    }
    if (node instanceof List<?> list) {
      List<Object> copy = new ArrayList<>();
      list.forEach(value -> copy.add(copy(value)));
      return copy;
    }
    return node;
  }

  private interface Leaf {
    void at(String path, Object holder, Object key);
  }

  private static void leaves(Object node, String path, Leaf leaf) {
    if (node instanceof Map<?, ?> map) {
      for (Object key : new ArrayList<>(map.keySet())) {
        String below = path.isEmpty() ? String.valueOf(key) : path + "." + key;
        leaf.at(below, map, key);
        leaves(map.get(key), below, leaf);
      }
    } else if (node instanceof List<?> list) {
      for (int i = list.size() - 1; i >= 0; i--) {
        leaf.at(path + "[]", list, i);
        leaves(list.get(i), path + "[]", leaf);
      }
    }
  }

  @SuppressWarnings({"unchecked", "rawtypes"})
  private static void changed(
      Object root,
      String path,
      Object holder,
      Object key,
      Map<String, String> before,
      Map<String, TreeSet<String>> read) {
    String declared = declared(path);
    if (declared == null) {
      withoutSection(root, path, holder, key, before, read);
      return;
    }
    Map<Object, Object> all = holder instanceof Map map ? new LinkedHashMap<>(map) : Map.of();
    Object now = holder instanceof Map map ? map.get(key) : ((List) holder).get((int) key);
    for (Object other : others(now)) {
      if (holder instanceof Map map) {
        map.put(key, other);
      } else {
        ((List) holder).set((int) key, other);
      }
      compare(dump(root), declared, before, read);
    }
    if (holder instanceof Map map) {
      map.remove(key);
      compare(dump(root), declared, before, read);
      map.clear();
      map.putAll(all);
    } else {
      ((List) holder).set((int) key, now);
    }
  }

  /** A whole section taken away counts for the rules that name it. */
  @SuppressWarnings({"unchecked", "rawtypes"})
  private static void withoutSection(
      Object root,
      String path,
      Object holder,
      Object key,
      Map<String, String> before,
      Map<String, TreeSet<String>> read) {
    if (!(holder instanceof Map map) || !(map.get(key) instanceof Map)) {
      return;
    }
    Map<Object, Object> all = new LinkedHashMap<>(map);
    map.remove(key);
    Map<String, TreeSet<String>> touched = new LinkedHashMap<>();
    read.keySet().forEach(id -> touched.put(id, new TreeSet<>()));
    compare(dump(root), path, before, touched);
    for (Rule rule : Rules.all()) {
      if (!touched.get(rule.id()).isEmpty() && List.of(rule.reads().split(" ")).contains(path)) {
        read.get(rule.id()).add(path);
      }
    }
    map.clear();
    map.putAll(all);
  }

  /** The declared key that holds a path; null for a section, whose keys are tried by themselves. */
  private static String declared(String path) {
    String best = null;
    for (KeyPath key : KeyPath.all()) {
      String own = key.path();
      if (path.equals(own) || path.startsWith(own + ".") || path.equals(own + "[]")) {
        best = best == null || own.length() > best.length() ? own : best;
      }
    }
    String found = best;
    boolean section =
        KeyPath.all().stream()
            .anyMatch(k -> k.path().startsWith(found + ".") || k.path().startsWith(found + "[]."));
    return section ? null : best;
  }

  private static List<Object> others(Object now) {
    List<Object> others = new ArrayList<>();
    if (!(now instanceof String text)) {
      return others;
    }
    if (text.matches("\\d{4}-\\d{2}-\\d{2}")) {
      others.addAll(List.of("2027-05-20", "2027-08-01", "2027-07-01"));
      return others;
    }
    Matcher number = NUMBER.matcher(text);
    boolean found = number.find();
    if (!found) {
      others.addAll(WORDS);
      return others;
    }
    do {
      double value = Double.parseDouble(number.group());
      boolean whole = number.group(1) == null && !text.contains(" ");
      for (double to : new double[] {value * 1.07, value * 0.8, value * 3, value / 10}) {
        String typed = whole ? String.valueOf(Math.round(to + Math.signum(to - value))) : "" + to;
        others.add(text.substring(0, number.start()) + typed + text.substring(number.end()));
      }
    } while (number.find());
    return others;
  }

  private static void compare(
      String text, String declared, Map<String, String> before, Map<String, TreeSet<String>> read) {
    Map<String, String> after = findings(text);
    for (String id : after.keySet()) {
      if (!after.get(id).equals(before.get(id))) {
        read.get(id).add(declared);
      }
    }
  }

  /** What each rule finds, as a text; empty for a plan that is refused. */
  private static Map<String, String> findings(String text) {
    Map<String, String> found = new LinkedHashMap<>();
    Plan plan;
    try {
      plan = Plan.Draft.of(Source.file("plan.yaml", text)).read();
    } catch (Refused e) {
      return found;
    }
    Subject subject = new Subject(plan);
    for (Rule rule : Rules.all()) {
      StringBuilder words = new StringBuilder();
      try {
        for (Finding f : Rules.judge(subject, new Rule[] {rule})) {
          words.append(f.verdict()).append(' ').append(f.value()).append(' ').append(f.limit());
          words.append(' ').append(f.part()).append(' ').append(f.saying());
          words.append(' ').append(f.reason());
          words
              .append(f.hasValue() || f.verdict() == Verdict.UNKNOWN ? "" : rule.words(subject, f))
              .append('\n');
        }
      } catch (Refused e) {
        words.append("refused");
      }
      found.put(rule.id(), words.toString());
    }
    return found;
  }
}
