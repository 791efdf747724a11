package leat.command.feed;

import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.solution.Element;
import leat.solution.Elements;
import leat.solution.recipes.LabelledBottle;

/** What a feed brings by the figures of its labels: a row for each element that they print. */
final class LabelTable {
  static final Column ELEMENT = Column.plain("element", "element");
  static final Column BROUGHT = Column.of("from_feed_mg_L", "the feed brings", Show.MG_L);
  private static final Column COUNT = Column.plain("bottles", "bottles");
  private static final Column BOTTLE = Column.plain("bottle", "bottle");

  private LabelTable() {}

  static Answer of(Elements brought) {
    Answer table = new Answer(ELEMENT, BROUGHT);
    for (int i = 0; i < Element.count(); i++) {
      Element element = Element.at(i);
      if (brought.knows(element)) {
        table.row().set(ELEMENT, element.label()).set(BROUGHT, brought.of(element));
      }
    }
    return table;
  }

  /** Puts the elements behind an answer's own figures in text. */
  static void tell(Answer answer, Answer table) {
    answer.block();
    for (int i = 0; i < table.size(); i++) {
      Row row = table.row(i);
      answer.figure(
          (String) row.get(ELEMENT),
          row,
          "{from_feed_mg_L}",
          i == 0 ? "from the feed, by its labels" : "");
    }
  }

  /** A column for each element of such a table. */
  static Column[] columns(Answer table) {
    Column[] columns = new Column[table.size()];
    for (int i = 0; i < columns.length; i++) {
      String name = (String) table.row(i).get(ELEMENT);
      columns[i] = Column.of(name.replace('-', '_') + "_from_feed_mg_L", name, Show.MG_L);
    }
    return columns;
  }

  /** Fills those columns. */
  static void fill(Row row, Column[] columns, Answer table) {
    for (int i = 0; i < columns.length; i++) {
      row.set(columns[i], (Double) table.row(i).get(BROUGHT));
    }
  }

  /** How the first of its elements comes about. */
  static void working(Answer answer, Answer table, List<LabelledBottle> bottles) {
    Row count = Row.aside(COUNT).set(COUNT, bottles.size());
    answer.working(
        table.row(0).with(count),
        BROUGHT,
        "mg/L = sum of rate x share on the label x density, oxides counted as their element",
        "{element} from {bottles} bottles, each at its own rate",
        "as good as the labels",
        "weights of IUPAC 2021");
  }

  /** What the labels leave open. */
  static void minds(Answer answer, List<LabelledBottle> bottles) {
    for (int i = 0; i < bottles.size(); i++) {
      LabelledBottle one = bottles.get(i);
      Row row = Row.aside(BOTTLE).set(BOTTLE, one.name());
      if (one.label().isBlank()) {
        answer.mind(
            "no-bottle-label",
            row,
            "{bottle} has no label in the plan: what it brings is not counted.");
      } else if (one.isOddlyDense()) {
        odd(answer);
      }
    }
  }

  static void odd(Answer answer) {
    answer.mind("odd-density", "liquid feeds weigh 0.95 to 1.6 g/mL: is that this bottle's?");
  }

  /** How the per cent were taken, where the plan leaves it open. */
  static void taken(Answer answer, List<LabelledBottle> bottles) {
    boolean open = false;
    for (int i = 0; i < bottles.size(); i++) {
      open |= !bottles.get(i).label().isBlank() && !bottles.get(i).weighs();
    }
    if (open) {
      answer.taken(
          Row.aside(BOTTLE),
          "the label's per cent are by volume, g in 100 mL, where feed.parts has no density");
    }
  }
}
