package leat.cli;

import java.util.ArrayList;
import java.util.List;

/**
 * The commands that there are, read from one list: {@link #walk()} names group and command, one
 * line each, and builds the one that is sought. Only the class of that command is loaded.
 */
public abstract class CommandList {
  private String sought;
  private List<String[]> seen;

  /** Groups in the order of help. */
  public abstract String[] groups();

  /**
   * Goes through the list: {@code if (is("build", "head")) return new HeadCommand();}; null when
   * nothing was sought or found.
   */
  protected abstract Command walk();

  /** Whether this line of the list is the one that is sought. */
  protected final boolean is(String group, String name) {
    if (seen != null) {
      seen.add(new String[] {group, name});
      return false;
    }
    return name.equals(sought);
  }

  /** Builds the command of a name of one or two words, or null. */
  public final Command of(String name) {
    sought = name;
    return walk();
  }

  /** Group and name of each command in the order of help, sub-commands behind their command. */
  public final List<String[]> all() {
    seen = new ArrayList<>();
    walk();
    List<String[]> all = seen;
    seen = null;
    return all;
  }

  /** What {@code leat --version} with flags answers; no command of the list. */
  public abstract Command version();

  /** Words of the sub-commands of a command, without its own. */
  public final List<String> subs(String command) {
    List<String[]> all = all();
    List<String> subs = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      String name = all.get(i)[1];
      if (name.startsWith(command + " ")) {
        subs.add(name.substring(command.length() + 1));
      }
    }
    return subs;
  }

  /** The words that a flag of free text takes, such as names of salts; null when any may stand. */
  public String[] words(Flag flag) {
    return flag.kind() == null ? null : flag.kind().words();
  }

  /** The words that the operands of a command may be; null when there is no list of them. */
  public String[] operandWords(Command command) {
    return null;
  }

  /** Names of the commands of one word. */
  public final String[] names() {
    List<String[]> all = all();
    List<String> names = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i)[1].indexOf(' ') < 0) {
        names.add(all.get(i)[1]);
      }
    }
    return names.toArray(new String[0]);
  }
}
