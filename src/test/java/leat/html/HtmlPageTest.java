package leat.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class HtmlPageTest {
  private static final String HOSTILE = "</script><img src=x onerror=\"alert('1')\">&\u202e\u0000";

  @Test
  void wordsAreNeverMarkup() {
    assertThat(HtmlPage.text(HOSTILE))
        .doesNotContain("<", ">", "\"", "'", "\u202e", "\u0000")
        .startsWith("&lt;/script&gt;")
        .contains("\\u202e\\u0000");
    assertThat(HtmlPage.text("a\ud83c\udf31b\ud83cc\udf31"))
        .isEqualTo("a\ud83c\udf31b\ufffdc\ufffd");
  }

  @Test
  void dataCannotEndItsElement() {
    String page = new HtmlPage(HOSTILE).data("d", "\"" + "</script><!--" + "\"").write();
    assertThat(page).contains("\"\\u003c/script\\u003e\\u003c!--\"");
    assertThat(page.split("</script>", -1)).hasSize(2);
  }

  /** The policy's hashes are those of the text between the tags, as CSP level 2 counts them. */
  @Test
  void onlyItsOwnScriptAndStyleWork() throws Exception {
    String page = HtmlPage.styled("t").script("document.title = 'run';").body("<p>x</p>").write();
    String policy = group(page, "Content-Security-Policy\" content=\"([^\"]*)\"");
    assertThat(policy)
        .startsWith("default-src 'none';")
        .contains("script-src " + hashOf(group(page, "<script>(.*?)</script>")) + ";")
        .contains("style-src " + hashOf(group(page, "<style>(.*?)</style>")) + ";")
        .doesNotContain("unsafe");
    assertThat(new HtmlPage("t").write()).contains("script-src 'none'; style-src 'none'");
  }

  private static String group(String text, String regex) {
    Matcher matcher = Pattern.compile(regex, Pattern.DOTALL).matcher(text);
    assertThat(matcher.find()).as(regex).isTrue();
    return matcher.group(1);
  }

  private static String hashOf(String text) throws Exception {
    byte[] digest =
        MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
    return "'sha256-" + Base64.getEncoder().encodeToString(digest) + "'";
  }
}
