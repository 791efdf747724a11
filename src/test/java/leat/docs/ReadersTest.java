package leat.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import leat.cli.RowsFuzz;
import leat.plan.PlanFuzz;
import leat.quantity.QuantityFuzz;
import org.junit.jupiter.api.Test;

/** The three readers on the corpus that coverage-guided runs ({@code mvn -Pjazzer}) left. */
class ReadersTest {
  private static List<byte[]> corpus(String reader) throws IOException {
    try (Stream<Path> files = Files.list(Path.of("src/test/resources/fuzz", reader))) {
      List<byte[]> all = new java.util.ArrayList<>();
      for (Path file : (Iterable<Path>) files.sorted()::iterator) {
        all.add(Files.readAllBytes(file));
      }
      assertThat(all).hasSizeGreaterThan(3);
      return all;
    }
  }

  @Test
  void quantity() throws IOException {
    for (byte[] input : corpus("quantity")) {
      QuantityFuzz.everyDimension(input);
    }
  }

  @Test
  void plan() throws IOException {
    for (byte[] input : corpus("plan")) {
      PlanFuzz.fuzzerTestOneInput(input);
    }
  }

  @Test
  void rows() throws IOException {
    for (byte[] input : corpus("rows")) {
      RowsFuzz.fuzzerTestOneInput(input);
    }
  }
}
