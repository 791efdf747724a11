package leat.cli;

import java.io.File;
import java.lang.reflect.Constructor;
import java.lang.reflect.Modifier;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import leat.command.Commands;

/**
 * The declared commands and flags, for the tests that live outside this package. Commands are found
 * by their classes, so that none can be left out of manual, completion and tests.
 */
public final class Declared {
  /** Folder of the compiled main classes. */
  public static final Path CLASSES =
      new File(Command.class.getProtectionDomain().getCodeSource().getLocation().getPath())
          .toPath();

  private static final Commands LIST = new Commands();

  private Declared() {}

  private static List<Class<?>> commandClasses() {
    return classesBelow("leat.command");
  }

  /** The main classes of a package, nested ones left out. */
  public static List<Class<?>> classesOf(String packageName) {
    File[] files = CLASSES.resolve(packageName.replace('.', '/')).toFile().listFiles();
    List<Class<?>> classes = new ArrayList<>();
    for (File file : files == null ? new File[0] : files) {
      String name = file.getName();
      if (name.endsWith(".class") && !name.contains("$") && !name.contains("-info")) {
        classes.add(load(packageName + "." + name.substring(0, name.length() - 6)));
      }
    }
    classes.sort(Comparator.comparing(Class::getName));
    return classes;
  }

  /** The main classes of a package and of the rooms in it, nested classes left out. */
  public static List<Class<?>> classesBelow(String packageName) {
    List<Class<?>> classes = new ArrayList<>(classesOf(packageName));
    File[] rooms = CLASSES.resolve(packageName.replace('.', '/')).toFile().listFiles();
    for (File room : rooms == null ? new File[0] : rooms) {
      if (room.isDirectory()) {
        classes.addAll(classesBelow(packageName + "." + room.getName()));
      }
    }
    return classes;
  }

  private static Class<?> load(String name) {
    try {
      return Class.forName(name);
    } catch (ClassNotFoundException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Every concrete subclass of {@link Command} but that of --version, built; in help's order. */
  public static List<Command> commands() {
    List<Command> commands = new ArrayList<>();
    for (Class<?> type : commandClasses()) {
      if (Command.class.isAssignableFrom(type)
          && !Modifier.isAbstract(type.getModifiers())
          && type != LIST.version().getClass()) {
        commands.add(build(type));
      }
    }
    commands.sort(
        Comparator.comparingInt((Command c) -> place(c.name())).thenComparing(Command::name));
    return commands;
  }

  private static Command build(Class<?> type) {
    try {
      Constructor<?> constructor = type.getDeclaredConstructor();
      constructor.setAccessible(true);
      return (Command) constructor.newInstance();
    } catch (ReflectiveOperationException e) {
      throw new AssertionError(type + " has no constructor without parameters", e);
    }
  }

  private static int place(String name) {
    List<String[]> all = LIST.all();
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i)[1].equals(name)) {
        return i;
      }
    }
    return Integer.MAX_VALUE;
  }

  /** What {@link Commands} builds for a name of one or two words. */
  public static Command listed(String name) {
    return LIST.of(name);
  }

  /** The group of help a command stands in, or null. */
  public static String group(Command command) {
    int place = place(command.name());
    return place == Integer.MAX_VALUE ? null : LIST.all().get(place)[0];
  }

  /** Groups in the order of help. */
  public static List<String> groups() {
    return Arrays.asList(LIST.groups());
  }

  /** Flags that every command has, as far as they fit this one. */
  public static Flag[] commonFlags(Command command) {
    return CommonFlags.of(command);
  }

  /** All flags of a command, its own first. */
  public static Flag[] allFlags(Command command) {
    return CommonFlags.all(command);
  }

  /** The words a flag takes, or null. */
  public static String[] words(Flag flag) {
    return LIST.words(flag);
  }

  /** The words the operands of a command may be, or null. */
  public static String[] operandWords(Command command) {
    return LIST.operandWords(command);
  }

  /** Codes of the problems told in a run. */
  public static List<String> codes(Terminal terminal) {
    List<String> codes = new ArrayList<>();
    terminal.told().forEach(p -> codes.add(p.code()));
    return codes;
  }
}
