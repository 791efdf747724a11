package leat.answer;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

/** Text is broken at blanks only, and never between a number and its unit. */
class WrapTest {
  @Test
  void aNumberStaysWithItsUnit() {
    assertThat(Wrap.lines("Lifting 8 L/min takes 2.28 m of head", 12, 12))
        .containsExactly("Lifting", "8 L/min", "takes 2.28 m", "of head");
    assertThat(Wrap.lines("type `leat plan new` now", 10, 10))
        .containsExactly("type", "`leat plan new`", "now");
    assertThat(Wrap.lines("EC: leat ec 5 --at 20, then write", 8, 8))
        .containsExactly("EC:", "leat ec 5 --at 20,", "then", "write");
    assertThat(Wrap.lines("such as \"2.2 m\" (twice)", 13, 9))
        .containsExactly("such as", "\"2.2 m\"", "(twice)");
    assertThat(Wrap.text("one two three\nfour", 8, "  ")).isEqualTo("one two\n  three\nfour");
    assertThat(Wrap.text("one two three", 0, "  ")).isEqualTo("one two three");
  }

  @Property
  void nothingIsLost(
      @ForAll
          @CharRange(from = 'a', to = 'c')
          @CharRange(from = '0', to = '1')
          @StringLength(max = 9)
          String word,
      @ForAll @IntRange(min = 1, max = 40) int room,
      @ForAll @IntRange(min = 1, max = 12) int times) {
    String text = (word + " 1 m ").repeat(times).strip();
    assertThat(String.join(" ", Wrap.lines(text, room, room))).isEqualTo(text);
    for (String line : Wrap.lines(text, room, room)) {
      assertThat(line).doesNotMatch("(.* )?1");
    }
  }
}
