package leat.command.plans;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.Flag;
import leat.plan.Key;
import leat.plan.KeyPath;
import leat.plan.Refused;
import leat.quantity.Nearest;

/** {@code leat plan keys}: every key of a plan. */
public final class PlanKeysCommand extends Command {
  private static final Column KEY = Column.plain("key", "key");
  private static final Column MEANING = Column.plain("meaning", "meaning");
  private static final Column KIND = Column.plain("kind", "kind");
  private static final Column EXAMPLE = Column.plain("example", "example");
  private static final Column DEFAULT = Column.plain("default", "default");
  private static final Column READ_BY = Column.plain("read_by", "read by");

  @Override
  public String name() {
    return "plan keys";
  }

  @Override
  public String operands() {
    return "[PREFIX]";
  }

  @Override
  public boolean takesPlan() {
    return false;
  }

  @Override
  public Flag[] flags() {
    return new Flag[0];
  }

  @Override
  public Answer answer(Call call) {
    List<String> operands = call.operands();
    if (operands.size() > 1) {
      throw new Refused(PlanCommandErrors.onePrefix(operands.get(1)));
    }
    String prefix = operands.isEmpty() ? "" : withoutIndices(operands.get(0));
    List<KeyPath> all = KeyPath.shown();
    Answer answer = new Answer(KEY, MEANING, KIND, EXAMPLE, DEFAULT, READ_BY).asList();
    for (int i = 0; i < all.size(); i++) {
      if (isUnder(all.get(i).path(), prefix)) {
        row(answer, all.get(i));
      }
    }
    if (answer.size() == 0) {
      throw new Refused(PlanCommandErrors.noSuchKey(operands.get(0), near(prefix, all)));
    }
    answer.sentence(sentence(answer.size(), prefix));
    return answer
        .table(KEY, EXAMPLE, DEFAULT, MEANING)
        .next("leat plan keys --format csv   tells kinds and readers too");
  }

  private static Phrase sentence(int count, String prefix) {
    Phrase words = Phrase.of().count(count).add(count == 1 ? " key" : " keys");
    return prefix.isEmpty() ? words.add(" in a plan.") : words.add(" under ").add(prefix).add(".");
  }

  private static void row(Answer answer, KeyPath path) {
    Key key = path.key();
    boolean section = key.shape() == Key.Shape.SECTION || key.shape() == Key.Shape.SECTIONS;
    answer
        .row()
        .set(KEY, path.path())
        .set(MEANING, key.meaning())
        .set(KIND, key.holds())
        .set(EXAMPLE, section ? null : key.example())
        .set(DEFAULT, key.byDefault())
        .set(READ_BY, path.readBy().isEmpty() ? null : path.readBy());
  }

  private static boolean isUnder(String path, String prefix) {
    if (prefix.isEmpty() || path.equals(prefix)) {
      return true;
    }
    if (!path.startsWith(prefix)) {
      return false;
    }
    char next = path.charAt(prefix.length());
    return next == '.' || next == '[';
  }

  /** "towers[0].riser" as "towers[].riser"; a missing [] in the middle is put in too. */
  private static String withoutIndices(String typed) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < typed.length(); i++) {
      char c = typed.charAt(i);
      int end = c == '[' ? typed.indexOf(']', i) : -1;
      if (end > 0) {
        out.append(end == typed.length() - 1 ? "" : "[]");
        i = end;
      } else {
        out.append(c);
      }
    }
    String path = out.toString();
    int last = path.length();
    while (last > 0 && path.charAt(last - 1) == '.') {
      last--;
    }
    return path.substring(0, last);
  }

  private static String near(String prefix, List<KeyPath> all) {
    List<String> paths = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      String path = all.get(i).path();
      if (path.replace("[]", "").equals(prefix)) {
        return path;
      }
      paths.add(path);
    }
    String near = Nearest.of(prefix, paths);
    return near != null ? near : lastWord(prefix, paths);
  }

  /** The first key that ends with the same word, or null. */
  private static String lastWord(String prefix, List<String> paths) {
    int dot = prefix.lastIndexOf('.') + 1;
    for (int i = 0; i < paths.size(); i++) {
      String path = paths.get(i);
      if (path.substring(path.lastIndexOf('.') + 1).equals(prefix.substring(dot))) {
        return path;
      }
    }
    return null;
  }
}
