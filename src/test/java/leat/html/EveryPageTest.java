package leat.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import leat.cli.Command;
import leat.cli.Examples;
import leat.cli.Ran;
import leat.command.Commands;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

/** Every example of every command as a page. */
class EveryPageTest {
  private static final Set<String> REFUSED =
      Set.of(
          "this answer is a text to keep as it is: leave --format html out",
          "rows that come one by one are csv or json");

  @Test
  void everyAnswerHasAPageOrSaysWhyNot() throws Exception {
    Commands commands = new Commands();
    Set<String> paged = new TreeSet<>();
    for (String[] groupAndName : commands.all()) {
      Command command = commands.of(groupAndName[1]);
      for (String example : command.examples()) {
        boolean piped = example.contains(" < ") || example.contains(" | ");
        // a card is a page of its own
        boolean card = command.name().equals("plan card");
        if (List.of(command.formats()).contains("html") && !piped && !card) {
          page(command, example, paged);
        }
      }
    }
    assertThat(paged)
        .hasSizeGreaterThan(28)
        .contains("head", "crops", "units", "parts", "season light");
  }

  private static void page(Command command, String example, Set<String> paged) throws Exception {
    String[] words = html(Examples.words(example));
    Ran ran = Ran.run(words);
    if (!ran.out().startsWith("<!DOCTYPE html>")) {
      assertThat(REFUSED).as(example + ": " + ran).anyMatch(why -> ran.err().contains(why));
      assertThat(ran.exit()).as(example).isEqualTo(2);
      return;
    }
    assertThat(ran.err()).as(example).isEmpty();
    Element root = Pages.parsed(ran.out()).getDocumentElement();
    assertThat(root.getElementsByTagName("h1").getLength()).as(example).isEqualTo(1);
    assertThat(root.getElementsByTagName("h1").item(0).getTextContent()).as(example).isNotBlank();
    paged.add(command.name());
  }

  /** The line with html in place of its own format, and without a file to write. */
  private static String[] html(String[] words) {
    List<String> line = new ArrayList<>();
    for (int i = 0; i < words.length; i++) {
      if (words[i].equals("--format") || words[i].equals("-o") || words[i].equals("--output")) {
        i++;
      } else {
        line.add(words[i]);
      }
    }
    line.addAll(List.of("--format", "html"));
    return line.toArray(new String[0]);
  }
}
