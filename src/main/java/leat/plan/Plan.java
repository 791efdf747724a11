package leat.plan;

import java.io.File;
import java.util.ArrayList;
import java.util.List;

/** A plan as read: its values by section, its file's name and folder. */
public final class Plan {
  private final String name;
  private final Section root;
  private final Asker asker;
  private final Node node;
  private final Node written;
  private final String currency;
  private final Plan before;
  private final Slot[] slots;
  private final double[] numbers;
  private Plan asWritten;

  private Plan(Plan before, Slot[] slots, double[] numbers) {
    this.name = before.name;
    Section laid = before.root;
    for (int i = 0; i < slots.length; i++) {
      laid = slots[i].lay(laid, numbers[i]);
    }
    this.root = laid;
    this.asker = before.asker;
    this.node = before.node;
    this.written = before.written;
    this.currency = before.currency;
    this.before = before;
    this.slots = slots;
    this.numbers = numbers;
  }

  private Plan(String name, Section root, Asker asker, Node node, Node written, String currency) {
    this.before = null;
    this.slots = null;
    this.numbers = null;
    this.written = written;
    this.currency = currency;
    this.name = name;
    this.root = root;
    this.asker = asker;
    this.node = node;
  }

  /** File name as given, or null when the plan came from flags alone. */
  public String fileName() {
    return name;
  }

  /** Whether a file or standard input was read. */
  public boolean isFromFile() {
    return name != null;
  }

  /** The plan's own name, else its file's. */
  public String title() {
    String own = root.text("name");
    return own != null ? own : name == null ? "" : name;
  }

  /** The code of the one currency of all prices; null when there is no price and none is named. */
  public String currency() {
    return currency;
  }

  /** Units of text that the plan names, or null. */
  public String units() {
    return root.text("units");
  }

  /** A file that the plan names; its path starts from the plan's own folder. */
  public File beside(String path) {
    File file = new File(path);
    File folder = node == null ? null : node.origin.source.folder();
    return file.isAbsolute() ? file : new File(folder, path);
  }

  /** The values. */
  public Section root() {
    return root;
  }

  /** Height of the tank's rim over its floor, m; null when the plan does not tell it. */
  public Double rim() {
    return TankSense.rim(section("tank"));
  }

  /** A section of the top level. */
  public Section section(String section) {
    return root.section(section);
  }

  /**
   * The keys that were asked for, lists of sections marked by {@code []}; empty unless the draft
   * was told to {@link Draft#record}.
   */
  public List<String> asked() {
    List<String> all = new ArrayList<>(asker.asked());
    if (asWritten != null) {
      all.addAll(asWritten.asker.asked());
    }
    return all;
  }

  Node node() {
    return node;
  }

  /** The text of the file, before anything is laid over it; empty without a file. */
  String writtenText() {
    return written == null ? "" : written.origin.source.text();
  }

  /**
   * The tower on which {@code pump.measured} was measured: the file as written, before flags,
   * {@code --set} and {@link #with} are laid over it. A bucket, or a whole pump, that they bring is
   * taken to stand under the tower as written. Without a file it is this plan.
   */
  public Plan asWritten() {
    if (before != null) {
      return before.asWritten();
    }
    if (written == node) {
      return this;
    }
    if (asWritten == null) {
      Draft draft = new Draft(name, written);
      draft.recording = asker.isRecording();
      asWritten = draft.read();
    }
    return asWritten;
  }

  /**
   * A number of this plan to lay over, found once.
   *
   * @param path such as {@code towers[*].riser.bore}
   * @throws Refused when it is no key, no number, or the plan has no such item
   */
  public Slot slot(String path) {
    Slot found = Slot.of(path);
    found.check(root);
    return found;
  }

  /**
   * This plan with a number laid over, in the base unit of its key: no text is read, and all that
   * is not on the way to the key is shared.
   *
   * @throws Refused when the number is out of the key's range, or does not go with the others
   */
  public Plan with(Slot slot, double number) {
    return with(new Slot[] {slot}, new double[] {number});
  }

  /**
   * The same with several numbers, all laid over before they are held against each other.
   *
   * @param slots of this plan; whoever asks leaves them and the numbers as they are
   * @param numbers one for each slot, in the base unit of its key
   * @throws Refused when a number is out of its key's range, or does not go with the others
   */
  public Plan with(Slot[] slots, double[] numbers) {
    Plan laid = new Plan(this, slots, numbers);
    List<Problem> problems = new ArrayList<>();
    PlanSense.check(laid.root, root, problems);
    if (!problems.isEmpty()) {
      throw new Refused(problems);
    }
    return laid;
  }

  /** This plan with one key changed; used by rules that look for a value that would pass. */
  public Plan with(String path, String value) {
    if (before != null) {
      Plan changed = before.with(path, value);
      for (int i = 0; i < slots.length; i++) {
        changed = slots[i].path().equals(path) ? changed : changed.with(slots[i], numbers[i]);
      }
      return changed;
    }
    Draft draft = new Draft(name, node);
    draft.written = written;
    Source source = Source.flag("value", value);
    draft.set(path, source);
    draft.node = Rivals.drop(draft.node, path, Origin.flag("value", value), false);
    return draft.read();
  }

  /**
   * A plan in the making: the tree of a file and the changes of flags, before its values are read.
   */
  public static final class Draft {
    private final String name;
    private Node node;
    private Node written;
    private boolean pumpTyped;
    private boolean recording;
    private final List<Problem> problems = new ArrayList<>();
    private final List<String> flagPaths = new ArrayList<>();
    private final List<String> flags = new ArrayList<>();

    private Draft(String name, Node node) {
      this.name = name;
      this.node = node;
      this.written = node;
    }

    /** A draft without a file. */
    public static Draft empty() {
      return new Draft(null, null);
    }

    /** A draft of a file's text. */
    public static Draft of(Source source) {
      List<Problem> found = new ArrayList<>();
      Node tree = YamlComposer.compose(source, found);
      if (tree == null && found.isEmpty() || tree != null && tree.isEmpty()) {
        found.add(PlanErrors.emptyPlan(source));
      }
      Draft draft = new Draft(source.name(), tree);
      draft.problems.addAll(found);
      return draft;
    }

    /**
     * Refuses a path that would begin a new item of a list with one key of it; {@code paths} are
     * all that are set.
     */
    public void refuseLone(List<String> paths, int which, Origin at) {
      Paths.refuseLone(node, paths, which, at);
    }

    /** Sets a key; the value is read as YAML flow; an empty one removes the key. */
    public Draft set(String path, Source value) {
      Origin at = Origin.flag(value.name(), value.text());
      Node tree = null;
      if (!value.text().isBlank()) {
        List<Problem> found = new ArrayList<>();
        tree = YamlComposer.compose(value, found);
        if (!found.isEmpty()) {
          throw new Refused(found);
        }
        if (tree == null) {
          throw new Refused(PlanErrors.onlyAComment(at));
        }
      }
      return lay(path, tree, at);
    }

    /** Sets a key to a text that is not read as YAML, as a flag gives it. */
    public Draft setText(String path, String flag, String typed) {
      Origin at = Origin.flag(flag, typed);
      lay(path, Node.scalar(at, typed, true), at);
      node = Rivals.dropBand(node, path, at);
      return this;
    }

    /** Sets a list key to several texts, as a repeated flag gives them. */
    public Draft setList(String path, String flag, List<String> typed) {
      List<Node> items = new ArrayList<>();
      for (int i = 0; i < typed.size(); i++) {
        items.add(Node.scalar(Origin.flag(flag, typed.get(i)), typed.get(i), true));
      }
      Origin at = Origin.flag(flag, String.join(" ", typed));
      return lay(path, Node.list(at, items), at);
    }

    private Draft lay(String path, Node value, Origin at) {
      pumpTyped |= value != null && ("pump".equals(path) || "pump.measured".equals(path));
      node = Paths.set(node, path, value, at);
      if (value != null) {
        node = Rivals.drop(node, path, at, true);
      }
      return this;
    }

    /** Says that a flag can set a key, so that a missing key is asked for by the flag. */
    public Draft flag(String path, String flag) {
      flagPaths.add(path);
      flags.add(flag);
      return this;
    }

    /** Refuses a text that is no YAML, or none of ours. */
    void refuseBroken() {
      if (!problems.isEmpty()) {
        throw new Refused(problems);
      }
    }

    /** Keeps which keys are asked for once the plan is read. */
    public Draft record() {
      recording = true;
      return this;
    }

    /** Reads the values; every mistake at once. */
    public Plan read() {
      Asker asker = new Asker(name, flagPaths, flags);
      List<Problem> all = new ArrayList<>(problems);
      Binder binder = new Binder(all, asker);
      Section root = binder.bind(node, Keys.PLAN);
      String currency = binder.currency(root.text("currency"));
      asker.speaks(root.text("units"), currency);
      PlanSense.check(root, all);
      if (!all.isEmpty()) {
        for (int i = 0; i < all.size(); i++) {
          all.set(i, all.get(i).inCurrency(currency));
        }
        all.sort(IN_ORDER);
        throw new Refused(all);
      }
      if (recording) {
        asker.record();
      }
      return new Plan(name, root, asker, node, written(), currency);
    }

    /** A bucket that was typed is held under the pump as it now is, on the tower of the file. */
    private Node written() {
      if (written == null) {
        return node;
      }
      return pumpTyped ? written.with("pump", written.origin, node.child("pump")) : written;
    }

    private static final java.util.Comparator<Problem> IN_ORDER =
        new java.util.Comparator<Problem>() {
          @Override
          public int compare(Problem a, Problem b) {
            return Problem.compare(a, b);
          }
        };
  }
}
