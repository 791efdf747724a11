package leat.command.feed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leat.cli.Cli;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever is typed at one place of a good line: an answer or a refusal, no NaN, no bug. */
class FeedWildInputTest {
  private static final String[] WILD = {
    "",
    " ",
    "0",
    "-1",
    "abc",
    "NaN",
    "1e400 L",
    "0 L",
    "-3 L",
    "1e300 L",
    "1e-300 L",
    "1e5 m3",
    "0 mS/cm",
    "-1 mS/cm",
    "1e-300 mS/cm",
    "199 mS/cm",
    "1e300 mS/cm",
    "0 mL/L",
    "1e-9 mL/L",
    "1e9 mL/L",
    "0 C",
    "-40 C",
    "60 C",
    "1e300 C",
    "0 %",
    "100 %",
    "1e9 %",
    "-5 %",
    "N=0",
    "N=",
    "=5",
    "N=1e300",
    "N=1e-300",
    "N=-1",
    "K=1e5",
    "potassium-nitrate=0",
    "potassium-nitrate=1e300",
    "potassium-nitrate=1e-300",
    "x=1",
    "0 g",
    "1e-30 g",
    "1e30 g",
    "\u0000",
    "1 mS/cm ppm",
    "900 ppm",
    "1e308 ppm",
    "-900 ppm",
    "9999999999",
    "true",
    "lettuce",
    "potassium-nitrate",
    "calcium-nitrate-4h2o",
    "--",
    "20 km",
    "0 kPa",
    "500 kPa"
  };

  static List<List<String>> lines() {
    return List.of(
        List.of("ec", "1.85 mS/cm", "--at", "18 C", "--coefficient", "2 %", "--scale", "500"),
        List.of("ec", "1.36 mS/cm", "--standard", "1.413 mS/cm", "--at", "20 C"),
        List.of("ec", "--ion", "K=390", "--ion", "Cl=355", "--at", "20 C"),
        List.of("ec", "--weighed", "potassium-nitrate=20", "--volume", "45 L"),
        List.of(
            "dose",
            "--volume",
            "45 L",
            "--from",
            "0.3 mS/cm",
            "--to",
            "1.6 mS/cm",
            "--rate",
            "5 mL/L",
            "--rate-ec",
            "1.9 mS/cm",
            "--parts",
            "2",
            "--step",
            "5 mL"),
        List.of(
            "dose",
            "--volume",
            "45 L",
            "--from",
            "0.3 mS/cm",
            "--label",
            "50 %",
            "--rate",
            "5 mL/L",
            "--rate-ec",
            "1.9 mS/cm"),
        List.of(
            "dose",
            "salts",
            "--volume",
            "45 L",
            "--ask",
            "N=150",
            "--ask",
            "Ca=90",
            "--salt",
            "calcium-nitrate-4h2o",
            "--salt",
            "potassium-nitrate",
            "--scale",
            "0.1 g",
            "--within",
            "5 %"),
        List.of("dose", "salts", "--volume", "45 L", "--weighed", "potassium-nitrate=20"),
        List.of("crops", "lettuce", "basil"),
        List.of("oxygen", "--at", "20 C", "--altitude", "300 m"),
        List.of("oxygen", "--at", "20 C", "--pressure", "95 kPa"));
  }

  @ParameterizedTest
  @MethodSource("lines")
  void oneWildValue(List<String> line) {
    int from = line.get(1).equals("salts") ? 2 : 1;
    for (int i = from; i < line.size(); i++) {
      if (line.get(i).startsWith("--")) {
        continue;
      }
      for (String wild : WILD) {
        for (String format : List.of("text", "json")) {
          List<String> args = new ArrayList<>(line);
          args.set(i, wild);
          args.addAll(Arrays.asList("--format", format, "--explain"));
          Cli cli = Cli.run(args.toArray(new String[0]));
          String said = args + "\n" + cli.out + cli.err;
          assertThat(cli.exit).as(said).isBetween(0, 2);
          assertThat(cli.out).as(said).doesNotContain("NaN").doesNotContain("Infinity");
          if (cli.exit == 2) {
            assertThat(cli.out).as(said).isEmpty();
            assertThat(cli.err).as(said).isNotEmpty().doesNotContain("bug");
          } else {
            assertThat(cli.out).as(said).isNotEmpty();
          }
        }
      }
    }
  }
}
