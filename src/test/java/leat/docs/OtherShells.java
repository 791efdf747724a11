package leat.docs;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import leat.check.Rules;
import leat.cli.Command;
import leat.cli.Declared;
import leat.cli.Flag;

/** Completion for fish and zsh, made from the same declarations as that for bash. */
final class OtherShells {
  static final Path FISH = Path.of("scripts/leat-completion.fish");
  static final Path ZSH = Path.of("scripts/leat-completion.zsh");

  private OtherShells() {}

  static String fish() {
    StringBuilder out = new StringBuilder();
    out.append("# Completion of leat for fish:  source scripts/leat-completion.fish\n");
    out.append("# Made from the declarations of the program; change those.\n\n");
    out.append("set -g __leat_keys ").append(String.join(" ", Completion.keys())).append('\n');
    out.append("set -g __leat_rules ").append(String.join(" ", Rules.ids())).append("\n\n");
    out.append(FISH_FUNCTIONS);
    for (Command command : Declared.commands()) {
      String[] words = command.name().split(" ");
      String when = words.length == 1 ? "__leat_first" : "__leat_after " + words[0];
      out.append("complete -c leat -f -n '").append(when).append("' -a ");
      out.append(words[words.length - 1]).append(" -d ").append(single(command.summary()));
      out.append('\n');
    }
    for (Command command : Declared.commands()) {
      String is = "complete -c leat -n '__leat_is \"" + command.name() + "\"'";
      for (Flag flag : Declared.allFlags(command)) {
        out.append(is).append(" -l ").append(flag.name().substring(2));
        if (flag.shortName() != null) {
          out.append(" -s ").append(flag.shortName().substring(1));
        }
        out.append(flag.label() == null ? "" : fishValues(Completion.values(flag)));
        out.append(" -d ").append(single(flag.meaning())).append('\n');
      }
      String operands = Completion.operands(command);
      if (operands != null) {
        out.append(is).append(fishOperands(operands)).append('\n');
      }
    }
    out.append("complete -c leat -n '__leat_is check; and __leat_behind --explain' -x");
    return out.append(" -a '$__leat_rules'\n").toString();
  }

  private static String fishValues(String values) {
    switch (values) {
      case "plans":
        return " -r -f -a '(__leat_plans)'";
      case "files":
        return " -r -F";
      case "keys":
        return " -x -a '$__leat_keys'";
      case "rules":
        return " -x -a '$__leat_rules'";
      case "nothing":
        return " -x";
      default:
        return " -x -a " + single(values);
    }
  }

  private static String fishOperands(String operands) {
    switch (operands) {
      case "plans":
        return " -f -a '(__leat_plans)'";
      case "keys":
        return " -f -a '$__leat_keys'";
      case "plans-keys":
        return " -f -a '(__leat_plans) $__leat_keys'";
      default:
        return " -f -a " + single(operands);
    }
  }

  private static String single(String text) {
    return "'" + text.replace("\\", "\\\\").replace("'", "\\'") + "'";
  }

  static String zsh() {
    StringBuilder out = new StringBuilder();
    out.append(
        "#compdef leat\n# Completion of leat for zsh: source it behind compinit, or put it ");
    out.append(
        "on the fpath as _leat.\n# Made from the declarations of the program; change those.\n\n");
    out.append("_leat_keys=(").append(quotedAll(Completion.keys())).append(")\n");
    out.append("_leat_rules=(").append(String.join(" ", Rules.ids())).append(")\n");
    out.append("_leat_commands=(\n");
    for (Command command : Declared.commands()) {
      if (!command.name().contains(" ")) {
        out.append("  ").append(zshQuoted(command.name() + ":" + command.summary())).append('\n');
      }
    }
    out.append(")\n\n").append(ZSH_FUNCTIONS);
    out.append("_leat() {\n  local command=${words[2]}\n");
    out.append(
        "  if (( CURRENT == 2 )); then\n    _describe command _leat_commands\n    return\n  fi\n");
    out.append("  case \"${words[2]} ${words[3]}\" in\n");
    String two =
        Declared.commands().stream()
            .map(Command::name)
            .filter(n -> n.contains(" "))
            .map(n -> "'" + n + "'")
            .collect(Collectors.joining("|"));
    out.append("    ").append(two).append(") command=\"${words[2]} ${words[3]}\" ;;\n  esac\n");
    out.append("  case $command in\n");
    for (Command command : Declared.commands()) {
      out.append("    '").append(command.name()).append("')\n");
      List<String> subs = subs(command);
      if (!subs.isEmpty()) {
        out.append("      (( CURRENT == 3 )) && compadd -- ");
        out.append(String.join(" ", subs)).append('\n');
      }
      out.append("      _arguments");
      for (Flag flag : Declared.allFlags(command)) {
        out.append(" \\\n        ").append(zshFlag(flag));
      }
      String operands = Completion.operands(command);
      if (operands != null) {
        String of = command.name().equals("check") ? "_leat_plan_or_rule" : zshValues(operands);
        out.append(" \\\n        ").append(zshQuoted("*:operand:" + of));
      }
      out.append(" ;;\n");
    }
    out.append("  esac\n}\n\n");
    // Found on the fpath, the file is the body of the function at its first call; sourced, it is
    // not.
    out.append("if [[ $funcstack[1] = _leat ]]; then\n  _leat \"$@\"\n");
    out.append("elif (( $+functions[compdef] )); then\n  compdef _leat leat\nfi\n");
    return out.toString();
  }

  private static List<String> subs(Command command) {
    return Declared.commands().stream()
        .map(Command::name)
        .filter(n -> n.startsWith(command.name() + " "))
        .map(n -> n.substring(command.name().length() + 1))
        .toList();
  }

  private static String zshFlag(Flag flag) {
    String names = flag.isRepeatable() ? "'*'" : "";
    if (flag.shortName() != null) {
      names += "{" + flag.name() + "," + flag.shortName() + "}";
    } else {
      names += flag.name();
    }
    String meaning = flag.meaning().replace("[", "(").replace("]", ")").replace(":", ";");
    String value =
        flag.label() == null ? "" : ":" + flag.label() + ":" + zshValues(Completion.values(flag));
    return names + zshQuoted("[" + meaning + "]" + value);
  }

  private static String zshValues(String values) {
    switch (values) {
      case "plans":
        return "_leat_plan_files";
      case "plans-keys":
        return "_leat_plan_or_key";
      case "files":
        return "_files";
      case "keys":
        return "_leat_key";
      case "rules":
        return "_leat_rule";
      case "nothing":
        return " ";
      default:
        return "(" + values + ")";
    }
  }

  private static String quotedAll(List<String> words) {
    return words.stream().map(OtherShells::zshQuoted).collect(Collectors.joining(" "));
  }

  private static String zshQuoted(String text) {
    return "'" + text.replace("'", "'\\''") + "'";
  }

  private static final String FISH_FUNCTIONS =
      """
      function __leat_words
          commandline -opc
      end

      function __leat_first
          test (count (__leat_words)) -eq 1
      end

      function __leat_after
          set -l w (__leat_words)
          test (count $w) -eq 2; and test "$w[2]" = "$argv[1]"
      end

      # The command of one word or two that was typed.
      function __leat_is
          set -l w (__leat_words)
          test (count $w) -ge 2; or return 1
          set -l two "$w[2]"
          test (count $w) -ge 3; and set two "$w[2] $w[3]"
          if test "$two" = "$argv[1]"
              return 0
          end
          test "$w[2]" = "$argv[1]"; or return 1
          # not when a sub-command was typed
          not complete -C "leat $w[2] " 2>/dev/null | string split -f1 \\t | contains -- "$w[3]"
      end

      function __leat_behind
          set -l w (__leat_words)
          test "$w[-1]" = "$argv[1]"
      end

      function __leat_plans
          __fish_complete_suffix .yaml
          __fish_complete_suffix .yml
      end

      """;

  private static final String ZSH_FUNCTIONS =
      """
      _leat_plan_files() { _files -g '*.y(a|)ml' }
      _leat_key() { compadd -S '' -- $_leat_keys }
      _leat_rule() { compadd -- $_leat_rules }
      _leat_plan_or_rule() {
        if [[ $words[CURRENT-1] == --explain ]]; then _leat_rule; else _leat_plan_files; fi
      }
      _leat_plan_or_key() {
        if (( CURRENT > 4 )); then _leat_key; else _leat_plan_files; fi
      }

      """;
}
