package leat.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The declarations themselves. */
class KeysTest {
  private final List<KeyPath> all = KeyPath.all();

  /** A plan that holds one key with this value, its sections around it. */
  static String planOf(String path, String value) {
    StringBuilder open = new StringBuilder();
    StringBuilder close = new StringBuilder();
    String[] parts = path.split("\\.");
    for (int i = 0; i < parts.length; i++) {
      boolean list = parts[i].endsWith("[]");
      open.append(list ? parts[i].substring(0, parts[i].length() - 2) : parts[i]).append(": ");
      if (i < parts.length - 1) {
        open.append(list ? "[{" : "{");
        close.insert(0, list ? "}]" : "}");
      }
    }
    return open + value + close + "\n";
  }

  @Test
  void everyExampleIsRead() {
    int read = 0;
    for (KeyPath path : all) {
      if (path.key().kind() == null) {
        continue;
      }
      Plan plan = Plans.plan(alone(path, path.key().example()));
      String at =
          path.path().startsWith("timing[]") ? "timing[1]" + path.path().substring(8) : path.path();
      Object value = Plans.at(plan.root(), at.replace("[]", "[0]"));
      assertThat(value).as(path.path()).isNotNull();
      read++;
    }
    assertThat(read).isGreaterThan(220);
  }

  /** A window's end needs its start, and a first timing has no window. */
  private static String alone(KeyPath path, String value) {
    String p = path.path();
    if (p.startsWith("timing[].")) {
      String other =
          p.endsWith(".from") ? ", to: \"06:00\"" : p.endsWith(".to") ? ", from: \"22:00\"" : "";
      return "timing: [{run: 90 s}, {" + path.key().name() + ": " + value + other + "}]\n";
    }
    if (p.equals("tariff.bands[].from") || p.equals("tariff.bands[].to")) {
      String other = p.endsWith(".from") ? "to" : "from";
      return "tariff: {bands: [{"
          + path.key().name()
          + ": "
          + value
          + ", "
          + other
          + ": \"06:00\"}]}\n";
    }
    return planOf(p, value);
  }

  @Test
  void everyDefaultIsReadAndSaid() {
    for (KeyPath path : all) {
      Key key = path.key();
      assertThat(key.byDefault() == null).as(path.path()).isEqualTo(key.takenAs() == null);
      if (key.byDefault() != null) {
        assertThat(key.kind().read(key.byDefault(), true)).as(path.path()).isNotNull();
        assertThat(key.takenAs()).as(path.path()).isNotBlank().doesNotEndWith(".");
      }
    }
  }

  @Test
  void everyKeyHasItsWords() {
    Set<String> paths = new HashSet<>();
    for (KeyPath path : all) {
      assertThat(paths.add(path.path())).as(path.path()).isTrue();
      assertThat(path.key().name()).matches("[a-z][a-z0-9]*(_[a-z0-9]+)*");
      assertThat(path.key().meaning()).as(path.path()).isNotBlank().doesNotEndWith(".");
      assertThat(path.key().holds()).as(path.path()).isNotBlank();
    }
  }

  @Test
  void noKeyIsAWordThatOlderReadersTakeForTrue() {
    for (KeyPath path : all) {
      assertThat(Yaml11.takesForOther(path.key().name())).as(path.path()).isFalse();
    }
  }
}
