package leat.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlanCommandsTest {
  @TempDir Path folder;

  @Test
  void theStarterIsAWholePlanThatPasses() throws Exception {
    Leat written = Leat.in(folder, "", Map.of(), "plan", "new", "-o", "my.yaml");
    assertThat(written.code).isZero();
    assertThat(written.out).isEmpty();
    String text = Files.readString(folder.resolve("my.yaml"));
    assertThat(text)
        .isEqualTo(Leat.run("plan", "new").out)
        .startsWith(
            "# A tower plan. Change what is marked <-, delete what you do not know; `leat check`"
                + " says what is missed.\n");
    assertThat(text.lines().filter(l -> l.contains("# <- "))).hasSizeGreaterThan(20);
    assertThat(text.lines().mapToInt(String::length).max().getAsInt()).isLessThan(140);
    Leat check = Leat.in(folder, "", Map.of(), "check", "my.yaml", "--format", "csv");
    assertThat(check.code).as(check.out).isZero();
    assertThat(check.out).doesNotContain(",fail,");
  }

  @Test
  void aPlanThatIsThereIsLeftAlone() throws Exception {
    Path mine = Files.writeString(folder.resolve("my.yaml"), "name: mine\n");
    Leat run = Leat.in(folder, "", Map.of(), "plan", "new", "-o", "my.yaml");
    assertThat(run.code).isEqualTo(3);
    assertThat(run.err).isEqualTo("my.yaml: it is there already; --force writes over it\n");
    assertThat(Files.readString(mine)).isEqualTo("name: mine\n");
    Leat forced =
        Leat.in(
            folder, "", Map.of(), "plan", "new", "-o", "my.yaml", "--force", "--name", "a: \"b\"");
    assertThat(forced.code).isZero();
    assertThat(Plans.plan(Files.readString(mine)).title()).isEqualTo("a: \"b\"");
  }

  @Test
  void planAloneTellsTheFour() {
    Leat run = Leat.run("plan");
    assertThat(run.code).isZero();
    assertThat(run.out)
        .contains("leat plan new ", "leat plan keys ", "leat plan show ", "leat plan schema ");
    Leat wrong = Leat.run("plan", "shwo");
    assertThat(wrong.code).isEqualTo(2);
    assertThat(wrong.err).isEqualTo("leat plan: no \"shwo\" there; did you mean \"plan show\"?\n");
  }

  @Test
  void keys() throws Exception {
    Leat run = Leat.run("plan", "keys", "--format", "csv");
    List<CSVRecord> rows =
        CSVFormat.RFC4180
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .get()
            .parse(new java.io.StringReader(run.out))
            .getRecords();
    assertThat(rows).hasSameSizeAs(KeyPath.shown());
    assertThat(run.out).startsWith("key,meaning,kind,example,default,read_by\n");
    CSVRecord bore =
        rows.stream().filter(r -> r.get("key").equals("towers[].riser.bore")).findFirst().get();
    assertThat(bore.get("meaning")).isEqualTo("inside diameter");
    assertThat(bore.get("kind")).isEqualTo("a length");
    assertThat(bore.get("example")).isEqualTo("13 mm");
    assertThat(bore.get("read_by")).contains("check");
    assertThat(Leat.run("plan", "keys", "towers[0].riser").out)
        .startsWith("9 keys under towers[].riser.");
    assertThat(Leat.run("plan", "keys", "towers").out).startsWith("51 keys under towers.");
    assertThat(Leat.run("plan", "keys", "wetting").out).startsWith("1 key under wetting.");
    assertThat(Leat.run("plan", "keys", "tank.dran").err)
        .isEqualTo(
            "leat plan keys: no key begins with \"tank.dran\"; did you mean \"tank.drain\"?\n");
    assertThat(Leat.run("plan", "keys", "towers.riser").err)
        .contains("did you mean \"towers[].riser\"?");
    assertThat(Leat.run("plan", "keys", "tank", "pump").code).isEqualTo(2);
  }

  @Test
  void schema() {
    Leat run = Leat.run("plan", "schema");
    assertThat(run.out).isEqualTo(PlanSchema.text()).endsWith("}\n");
    assertThat(run.err).isEmpty();
  }
}
