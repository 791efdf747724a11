package leat.docs;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import leat.check.Rules;
import leat.cli.Command;
import leat.cli.Declared;
import leat.cli.Flag;
import leat.plan.Key;
import leat.plan.Keys;

/** Completion for bash, made from the declarations of commands and flags. */
final class Completion {
  static final Path FILE = Path.of("scripts/leat-completion.bash");

  private Completion() {}

  static String script() {
    List<Command> commands = Declared.commands();
    TreeSet<String> first = new TreeSet<>();
    Map<String, List<String>> second = new TreeMap<>();
    for (Command command : commands) {
      String[] words = command.name().split(" ");
      first.add(words[0]);
      if (words.length == 2) {
        second.computeIfAbsent(words[0], w -> new ArrayList<>()).add(words[1]);
      }
    }
    StringBuilder out = new StringBuilder();
    out.append("# Completion of leat for bash:  source scripts/leat-completion.bash\n");
    out.append("# Made from the declarations of the program; change those.\n\n");
    out.append("_leat_commands='").append(String.join(" ", first)).append(" help'\n\n");
    out.append("_leat_second() {\n  case $1 in\n");
    second.forEach((word, words) -> line(out, word, "'" + String.join(" ", words) + "'"));
    out.append("  esac\n}\n\n");
    out.append("_leat_flags() {\n  case $1 in\n");
    for (Command command : commands) {
      line(out, pattern(command), "'" + String.join(" ", names(command)) + "'");
    }
    out.append("  esac\n}\n\n");
    out.append(
        "# What stands behind a flag: words, keys of a plan, files, or something only you know.\n");
    out.append("_leat_values() {\n  case $1:$2 in\n");
    for (Command command : commands) {
      Map<String, List<String>> flags = new TreeMap<>();
      for (Flag flag : Declared.allFlags(command)) {
        if (flag.label() != null) {
          flags.computeIfAbsent(values(flag), v -> new ArrayList<>()).add(pattern(command, flag));
        }
      }
      flags.forEach((values, names) -> line(out, String.join("|", names), "'" + values + "'"));
    }
    out.append("  esac\n}\n\n");
    out.append("_leat_operands() {\n  case $1 in\n");
    for (Command command : commands) {
      if (operands(command) != null) {
        line(out, pattern(command), "'" + operands(command) + "'");
      }
    }
    out.append("  esac\n}\n\n");
    out.append("_leat_keys='").append(String.join(" ", keys())).append("'\n");
    out.append("_leat_rules='").append(String.join(" ", Rules.ids())).append("'\n\n");
    return out.append(FUNCTION).toString();
  }

  private static void line(StringBuilder out, String pattern, String words) {
    out.append("    ").append(pattern).append(") echo ").append(words).append(" ;;\n");
  }

  private static String pattern(Command command) {
    return command.name().replace(" ", "\\ ");
  }

  private static String pattern(Command command, Flag flag) {
    StringBuilder pattern = new StringBuilder();
    for (String name : new String[] {flag.name(), flag.shortName(), flag.alias()}) {
      if (name != null) {
        pattern.append(pattern.length() == 0 ? "" : "|").append(pattern(command));
        pattern.append(':').append(name);
      }
    }
    return pattern.toString();
  }

  private static List<String> names(Command command) {
    List<String> names = new ArrayList<>();
    for (Flag flag : Declared.allFlags(command)) {
      names.add(flag.name());
    }
    return names;
  }

  /** The words a flag takes, or one of plans, rules, keys, files, nothing. */
  static String values(Flag flag) {
    String[] words = Declared.words(flag);
    if (flag.name().equals("--rule")) {
      return "rules";
    }
    if (words != null) {
      String end = flag.label().contains("=") ? "=" : "";
      return String.join(" ", words).replace(" ", end + " ") + end;
    }
    if (flag.name().equals("--plan")) {
      return "plans";
    }
    if (flag.label().startsWith("KEY")) {
      return "keys";
    }
    return flag.label().equals("FILE") ? "files" : "nothing";
  }

  /** What the operands of a command are: words, or plans, keys, or both; null for none. */
  static String operands(Command command) {
    String[] words = Declared.operandWords(command);
    if (words != null) {
      return java.util.Arrays.stream(words)
          .filter(w -> w.matches("[A-Za-z0-9-]+"))
          .collect(java.util.stream.Collectors.joining(" "));
    }
    String operands = command.operands();
    if (operands.contains("KEY=")) {
      return "plans-keys";
    }
    if (operands.equals("[PREFIX]")) {
      return "keys";
    }
    return operands.contains("PLAN") || command.takesPlan() ? "plans" : null;
  }

  static List<String> keys() {
    List<String> keys = new ArrayList<>();
    keys(Keys.PLAN, "", keys);
    return keys;
  }

  private static void keys(Key section, String path, List<String> into) {
    for (Key key : section.keys()) {
      String name = path.isEmpty() ? key.name() : path + "." + key.name();
      if (key.keys().length == 0) {
        into.add(name + "=");
      } else {
        keys(key, key.shape() == Key.Shape.SECTIONS ? name + "[0]" : name, into);
      }
    }
  }

  private static final String FUNCTION =
      """
      _leat_plan_files() {
        local name
        compgen -d -S / -- "$1"
        compgen -f -- "$1" | while IFS= read -r name; do
          case $name in *.yaml|*.yml) printf '%s\\n' "$name" ;; esac
        done
      }

      _leat() {
        local cur=$2 command words value flag i
        COMPREPLY=()
        if [ "$COMP_CWORD" -le 1 ]; then
          mapfile -t COMPREPLY < <(compgen -W "$_leat_commands --help --version" -- "$cur")
          return
        fi
        command=${COMP_WORDS[1]}
        if [ "$command" = help ]; then
          mapfile -t COMPREPLY < <(compgen -W "$_leat_commands" -- "$cur")
          return
        fi
        words=$(_leat_second "$command")
        if [ -n "$words" ] && [ "$COMP_CWORD" -gt 2 ]; then
          case " $words " in *" ${COMP_WORDS[2]} "*) command="$command ${COMP_WORDS[2]}" ;; esac
        fi
        # The flag this value belongs to; bash parts --flag=value at the equals sign.
        i=$((COMP_CWORD - 1))
        [ "$cur" = = ] && cur=
        [ "${COMP_WORDS[i]}" = = ] && i=$((i - 1))
        [ "${COMP_WORDS[COMP_CWORD]}" = = ] && i=$((COMP_CWORD - 1))
        flag=${COMP_WORDS[i]}
        case $flag in
          -*) value=$(_leat_values "$command" "$flag") ;;
        esac
        if [ -z "$value" ] && [ "${cur#-}" = "$cur" ]; then
          value=$(_leat_operands "$command")
          [ "$command:$flag" = check:--explain ] && value=rules
          if [ "$value" = plans ] && [ -n "$words" ] && [ "$COMP_CWORD" -eq 2 ]; then
            case " $words " in *" $cur"*) value= ;; esac
          fi
          if [ "$value" = plans-keys ]; then
            [ "$COMP_CWORD" -gt 3 ] && value=keys || value=plans
          fi
        fi
        case $value in
          plans)
            compopt -o filenames 2>/dev/null
            mapfile -t COMPREPLY < <(_leat_plan_files "$cur")
            ;;
          files)
            compopt -o filenames 2>/dev/null
            mapfile -t COMPREPLY < <(compgen -f -- "$cur")
            ;;
          keys)
            compopt -o nospace 2>/dev/null
            mapfile -t COMPREPLY < <(compgen -W "$_leat_keys" -- "$cur")
            ;;
          rules) mapfile -t COMPREPLY < <(compgen -W "$_leat_rules" -- "$cur") ;;
          nothing) ;;
          '')
            [ "$COMP_CWORD" -eq 2 ] || words=
            mapfile -t COMPREPLY < <(compgen -W "$words $(_leat_flags "$command")" -- "$cur")
            ;;
          *)
            case $value in *=) compopt -o nospace 2>/dev/null ;; esac
            mapfile -t COMPREPLY < <(compgen -W "$value" -- "$cur")
            ;;
        esac
      }

      complete -F _leat leat
      """;
}
