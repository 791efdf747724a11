package leat.cli;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import leat.plan.PlanErrors;
import leat.plan.Refused;

/** An input under its name: trouble while reading it is told as such, not as trouble of writing. */
final class Inlet extends FilterInputStream {
  private final String name;

  Inlet(InputStream in, String name) {
    super(in);
    this.name = name;
  }

  @Override
  public int read() {
    try {
      return in.read();
    } catch (IOException e) {
      throw refused();
    }
  }

  @Override
  public int read(byte[] into, int from, int length) {
    try {
      return in.read(into, from, length);
    } catch (IOException e) {
      throw refused();
    }
  }

  private Refused refused() {
    return new Refused(
        List.of(PlanErrors.cannotRead(name, "it cannot be read; is it a folder, or closed?")), 3);
  }
}
