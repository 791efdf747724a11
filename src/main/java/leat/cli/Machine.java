package leat.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.zone.ZoneRulesProvider;
import java.util.List;
import java.util.Locale;

/** What a run stands on: versions, Java, archive, as far as the process can tell. Null: unknown. */
public final class Machine {
  private static final String MANIFEST = "/META-INF/MANIFEST.MF";
  private static final String LIBRARIES = "Libraries: ";

  private Machine() {}

  /** The version of leat, null for classes that were not packaged. */
  public static String version() {
    return Machine.class.getPackage().getImplementationVersion();
  }

  /** The libraries in the jar with their versions, as the build wrote them into its manifest. */
  public static String libraries() {
    if (version() == null) {
      return null;
    }
    try (InputStream in = Machine.class.getResourceAsStream(MANIFEST)) {
      // A long line goes on behind a line feed and one space.
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      String[] lines = text.replace("\r\n", "\n").replace("\n ", "").split("\n");
      for (int i = 0; i < lines.length; i++) {
        if (lines[i].startsWith(LIBRARIES)) {
          return lines[i].substring(LIBRARIES.length());
        }
      }
      return null;
    } catch (IOException e) {
      return null;
    }
  }

  /** The version of the Java that runs. */
  public static String java() {
    return Runtime.version() + " (" + System.getProperty("java.vendor") + ")";
  }

  /** Its place. */
  public static String home() {
    return System.getProperty("java.home");
  }

  /** Which edition of the world's time zones that Java has, such as 2025a. */
  public static String zoneRules() {
    return ZoneRulesProvider.getVersions("UTC").lastKey();
  }

  /** The locale in force; numbers and words do not hang on it. */
  public static String locale() {
    return Locale.getDefault().toLanguageTag();
  }

  /** Where the launcher keeps class-data archives. */
  public static String cache() {
    return System.getProperty("leat.cache");
  }

  /** The class-data archives of leat that this run has taken in, as the system lists them. */
  public static String archives() {
    StringBuilder found = new StringBuilder();
    try {
      List<String> maps = Files.readAllLines(Path.of("/proc/self/maps"), StandardCharsets.UTF_8);
      for (int i = 0; i < maps.size(); i++) {
        int at = maps.get(i).indexOf('/');
        String file = at < 0 ? "" : maps.get(i).substring(at);
        String own = home();
        if (file.endsWith(".jsa") && !file.startsWith(own) && found.indexOf(file) < 0) {
          found.append(found.length() == 0 ? "" : ", ").append(file);
        }
      }
    } catch (IOException e) {
      return null;
    }
    return found.toString();
  }
}
