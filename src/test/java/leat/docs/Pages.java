package leat.docs;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Pages whose words stand in a text file of src/test/docs: the guide of an evening, the glossary.
 */
final class Pages {
  private Pages() {}

  /** The guide: its lines that begin with a dollar are run, one after the other, in one folder. */
  static String guide(Shell shell) {
    List<String> lines = lines("guide.txt");
    Roff page = new Roff("LEAT", 7, "leat", lines.get(0));
    page.head("DESCRIPTION");
    for (String line : lines.subList(1, lines.size())) {
      if (line.startsWith("## ")) {
        page.head(line.substring(3).toUpperCase(Locale.ROOT));
      } else if (line.startsWith("$ leat ")) {
        Shell.Shown shown = shell.run(line.substring(2));
        if (shown.exit() > 1) {
          throw new AssertionError(line + "\n" + shown.text());
        }
        page.verbatim(line + "\n" + shown.text().stripTrailing());
      } else if (!line.isBlank()) {
        page.paragraph(line);
      }
    }
    seeAlso(page, "leat(1)", "leat-plan(5)", "leat-glossary(7)", "leat-sources(7)");
    return page.toString();
  }

  /** The glossary: a term, a colon, what it means here. */
  static String glossary() {
    List<String> lines = lines("glossary.txt");
    Roff page = new Roff("LEAT-GLOSSARY", 7, "leat-glossary", lines.get(0));
    page.head("DESCRIPTION");
    page.paragraph(lines.get(1));
    page.head("WORDS");
    terms().forEach((term, meaning) -> page.entry(Roff.bold(term), Roff.text(meaning)));
    seeAlso(page, "leat(1)", "leat(7)", "leat-units(7)", "leat-rules(7)");
    return page.toString();
  }

  /** The terms of the glossary, in the order of the file. */
  static Map<String, String> terms() {
    Map<String, String> terms = new java.util.LinkedHashMap<>();
    List<String> lines = lines("glossary.txt");
    for (String line : lines.subList(2, lines.size())) {
      int colon = line.indexOf(": ");
      if (colon > 0) {
        terms.put(line.substring(0, colon), line.substring(colon + 2));
      }
    }
    return terms;
  }

  static void seeAlso(Roff page, String... names) {
    page.head("SEE ALSO");
    page.marked(ManPages.references(List.of(names)));
  }

  private static List<String> lines(String file) {
    return new ArrayList<>(
        Golden.read(java.nio.file.Path.of("src/test/docs", file)).lines().toList());
  }
}
