package leat.docs;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import leat.numeric.Validity;
import leat.quantity.NumberText;

/** Every formula of the trade with its range and source, read from the code that computes it. */
final class Sources {
  private static final Path CODE = Path.of("src/main/java");

  /** The trades, in the order of a grower's year. */
  private static final List<String> TRADES =
      List.of(
          "hydraulics",
          "level",
          "solution",
          "energy",
          "climate",
          "season",
          "stability",
          "parts",
          "log");

  private Sources() {}

  static String page() {
    Roff page =
        new Roff(
            "LEAT-SOURCES",
            7,
            "leat-sources",
            "every formula, with its range and where it is from");
    page.head("DESCRIPTION");
    page.paragraph(
        "Made from the code that computes. \"Common practice, no source\" and \"from memory\" say that nothing printed stands behind a number."
            + " A range is where a formula was fitted or checked; outside of it an answer says so.");
    for (String trade : TRADES) {
      boolean first = true;
      for (Path file : files(trade)) {
        String javadoc = javadoc(Golden.read(file));
        if (javadoc.contains("Source:")) {
          if (first) {
            page.head(trade.toUpperCase(java.util.Locale.ROOT));
            first = false;
          }
          entry(page, file, javadoc);
        }
      }
    }
    Pages.seeAlso(page, "leat(1)", "leat-rules(7)", "leat-glossary(7)");
    return page.toString();
  }

  private static List<Path> files(String trade) {
    try (Stream<Path> all = Files.walk(CODE.resolve("leat").resolve(trade))) {
      return all.filter(f -> f.toString().endsWith(".java"))
          .filter(f -> !f.endsWith("package-info.java"))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What stands before the declaration of the class. */
  private static String javadoc(String java) {
    int type = java.indexOf("\npublic ");
    int end = java.lastIndexOf("*/", type);
    int start = java.lastIndexOf("/**", end);
    return type < 0 || start < 0
        ? ""
        : java.substring(start + 3, end).replaceAll("(?m)^\\s*\\* ?", "");
  }

  private static void entry(Roff page, Path file, String javadoc) {
    page.subhead(words(file.getFileName().toString().replace(".java", "")));
    javadoc = javadoc.replaceAll("(?s)\n@(?:param|throws|see) .*", "");
    Matcher pre = Pattern.compile("(?s)<pre>(.*?)</pre>").matcher(javadoc);
    int at = 0;
    while (pre.find()) {
      paragraphs(page, javadoc.substring(at, pre.start()));
      page.verbatim(plain(pre.group(1)).strip());
      at = pre.end();
    }
    paragraphs(page, javadoc.substring(at));
    String range = range(file);
    if (!range.isEmpty()) {
      page.paragraph("Range: " + range + ".");
    }
  }

  private static void paragraphs(Roff page, String javadoc) {
    for (String paragraph : javadoc.split("<p>")) {
      String text = plain(paragraph).replaceAll("\\s+", " ").strip();
      text = text.replaceAll(" ?Range: VALID[.,;]?", "");
      if (!text.isEmpty()) {
        page.paragraph(text);
      }
    }
  }

  private static String plain(String javadoc) {
    return javadoc
        .replaceAll("\\{@(?:code|literal|value) ([^}]*)\\}", "$1")
        .replaceAll("\\{@link(?:plain)? [^}]* ([^} ]+)\\}", "$1")
        .replaceAll("\\{@link(?:plain)? #?([^}]*)\\}", "$1")
        .replaceAll("</?(?:ul|ol|li|i|b|em|br|sub|sup|table|tr|td|th)>", " ")
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&#64;", "@")
        .replace("&amp;", "&");
  }

  /** {@code OpenWater} as "open water". */
  private static String words(String name) {
    return name.replaceAll("(?<=[a-z0-9])(?=[A-Z])", " ")
        .toLowerCase(java.util.Locale.ROOT)
        .replaceFirst("et0", "ET0");
  }

  private static String range(Path file) {
    String name = CODE.relativize(file).toString().replace(".java", "").replace('/', '.');
    StringBuilder out = new StringBuilder();
    try {
      for (Field field : Class.forName(name).getDeclaredFields()) {
        if (field.getType() == Validity.class && Modifier.isStatic(field.getModifiers())) {
          field.setAccessible(true);
          Validity valid = (Validity) field.get(null);
          for (int i = 0; i < valid.size(); i++) {
            out.append(out.length() == 0 ? "" : "; ").append(valid.name(i)).append(' ');
            out.append(NumberText.shortest(valid.low(i))).append(" to ");
            out.append(NumberText.shortest(valid.high(i)));
          }
        }
      }
    } catch (ReflectiveOperationException e) {
      throw new AssertionError(name, e);
    }
    return out.toString();
  }
}
