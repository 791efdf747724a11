package leat.cli;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import leat.plan.Refused;

/** The name behind --output, held against what else was typed. */
final class OutputName {
  private OutputName() {}

  /** Refuses a format in place of a file, and a file that the command reads. */
  static void refuseMistaken(Call call) {
    String name = call.text(CommonFlags.OUTPUT.name);
    File file = call.terminal.file(name);
    if (CommandErrors.isFormat(call.command, name) && !file.exists()) {
      throw new Refused(OutputErrors.formatAsFile(call.command, name));
    }
    if (!file.isFile()) {
      return;
    }
    refuseSame(call, name, call.operands);
    for (int i = 0; i < call.flags.length; i++) {
      if (call.flags[i] != CommonFlags.OUTPUT) {
        refuseSame(call, name, call.texts(call.flags[i].name));
      }
    }
  }

  private static void refuseSame(Call call, String name, List<String> words) {
    for (int i = 0; i < words.size(); i++) {
      if (isSame(call.terminal.file(words.get(i)), call.terminal.file(name))) {
        throw new Refused(OutputErrors.writesOverInput(call.command, name));
      }
    }
  }

  private static boolean isSame(File read, File written) {
    try {
      return read.isFile() && Files.isSameFile(read.toPath(), written.toPath());
    } catch (IOException e) {
      // a file that went away meanwhile is not written over
      return false;
    }
  }
}
