package leat.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Other signs between and within the numbers of csv, read and written. */
class DelimitersTest {
  @Test
  void decimalCommasBetweenTabs() {
    String[] signs = {"\\t", "tab", "\t"};
    for (String tab : signs) {
      Cli answer =
          Cli.run("ec", "1.85 mS/cm", "-q", "-f", "csv", "--delimiter", tab, "--decimal", ",");
      assertThat(answer.out)
          .isEqualTo("ec_mS_cm\tec25_mS_cm\tppm500\tppm640\tppm700\n1,85\t1,85\t925\t1184\t1295\n");
    }
  }

  @Test
  void rowsComeOutWithTheSignsTheyCameInWith() {
    Cli answer =
        Cli.piped(
            "ec\tnote\n1,85\t\"a;b\"\n",
            "ec",
            "--column=ec",
            "--unit=mS/cm",
            "--prefix=x_",
            "--delimiter=tab",
            "--decimal=,");
    assertThat(answer.out).endsWith("\n1,85\t\"a;b\"\t1,85\t1,85\t925\t1184\t1295\tok\n");
    assertThat(answer.exit).isZero();
  }

  @Test
  void theSameSignForBothIsRefused() {
    Cli answer = Cli.run("ec", "1.85 mS/cm", "-f", "csv", "--decimal", ",");
    assertThat(answer.exit).isEqualTo(2);
    assertThat(answer.err).contains("--delimiter").contains(",");
  }
}
