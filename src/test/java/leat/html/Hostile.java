package leat.html;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A plan whose names try to be markup. */
final class Hostile {
  static final String NAME = "</script><img src=x onerror=\"window.hurt=1\">";
  static final String TOWER = "</h2><svg onload=window.hurt=1><a href=javascript:window.hurt=1>x";

  private Hostile() {}

  static Path plan(Path folder) throws IOException {
    String text = Files.readString(Path.of("examples/terrace.yaml"));
    text = text.replaceFirst("(?m)^name:.*$", "name: '" + NAME + "'");
    text = text.replace("name: north", "name: '" + TOWER + "'");
    text = text.replace("name: south", "name: '" + "long ".repeat(40_000) + "'");
    return Files.writeString(folder.resolve("hostile.yaml"), text);
  }
}
