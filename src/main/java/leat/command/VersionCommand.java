package leat.command;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.Flag;
import leat.cli.Machine;

/** {@code leat --version -v}: what an answer rests on, so that it can be told and made again. */
public final class VersionCommand extends Command {
  static final Column FACT = Column.plain("name", "name");
  static final Column VALUE = Column.plain("value", "value");
  static final Column FROM = Column.plain("source", "source");

  static final Column LEAT = Column.plain("leat", "leat");
  static final Column JAVA = Column.plain("java", "Java");
  static final Column JAVA_HOME = Column.plain("java_home", "its place");
  static final Column LIBRARIES = Column.plain("libraries", "libraries");
  static final Column ZONE = Column.plain("zone", "time zone");
  static final Column ZONE_RULES = Column.plain("zone_rules", "rules of time zones");
  static final Column LOCALE = Column.plain("locale", "locale");
  static final Column ARCHIVES = Column.plain("start_archives", "start archives");
  static final Column CACHE = Column.plain("cache", "cache folder");

  static final Column TABLE = Column.plain("table", "table");
  static final Column NEWEST = Column.plain("newest", "newest source");

  /** Name, class, year of the newest source or -, sources; a test holds them to the classes. */
  private static final String TABLES = "tables.txt";

  @Override
  public String name() {
    return "--version";
  }

  @Override
  public boolean takesPlan() {
    return false;
  }

  @Override
  public Flag[] flags() {
    return new Flag[] {
      Flag.on("--verbose", "-v", "what else an answer rests on: Java, zone, archive, data")
    };
  }

  @Override
  public Answer answer(Call call) {
    Answer facts =
        new Answer(LEAT, JAVA, JAVA_HOME, LIBRARIES, ZONE, ZONE_RULES, LOCALE, ARCHIVES, CACHE);
    String version = Machine.version();
    String archives = Machine.archives();
    Row row =
        facts
            .row()
            .set(LEAT, version == null ? "(not packaged)" : version)
            .set(JAVA, Machine.java())
            .set(JAVA_HOME, Machine.home())
            .set(LIBRARIES, Machine.libraries())
            .set(ZONE, call.terminal.clock().getZone().getId())
            .set(ZONE_RULES, Machine.zoneRules())
            .set(LOCALE, Machine.locale())
            .set(ARCHIVES, archives != null && archives.isEmpty() ? "none" : archives)
            .set(CACHE, Machine.cache());
    Answer tables = new Answer(TABLE, NEWEST, FROM);
    Answer answer = new Answer(FACT, VALUE, FROM);
    Column[] all = facts.columns();
    for (int i = 0; i < all.length; i++) {
      answer.row().set(FACT, all[i].label()).set(VALUE, (String) row.get(all[i]));
      answer.figure(all[i].label(), Answer.phrase(row, all[i]));
    }
    answer.block();
    tables(tables, answer);
    answer.jsonObject(facts).array("tables", tables);
    return answer.sentence(row, "leat {leat}");
  }

  private static void tables(Answer tables, Answer answer) {
    String[] lines = text().split("\n");
    for (int i = 0; i < lines.length; i++) {
      String[] cells = lines[i].split("\\|");
      String newest = "-".equals(cells[2]) ? null : cells[2];
      tables.row().set(TABLE, cells[0]).set(NEWEST, newest).set(FROM, cells[3]);
      Row row = answer.row().set(FACT, cells[0]).set(VALUE, newest).set(FROM, cells[3]);
      answer.figure(cells[0], Answer.phrase(row, VALUE), Answer.phrase(row, FROM));
    }
  }

  static String text() {
    try (InputStream in = VersionCommand.class.getResourceAsStream(TABLES)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new IllegalStateException(TABLES + ": " + e.getMessage(), e);
    }
  }
}
