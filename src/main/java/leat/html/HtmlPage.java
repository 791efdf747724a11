package leat.html;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import leat.quantity.Visible;

/**
 * The frame of a page: one file that asks for nothing from elsewhere. Its Content-Security-Policy
 * lets only the style and the script in it work, known by their hashes; so text that slipped
 * through as markup would still run nothing. Elements therefore have no {@code style} attribute and
 * no handlers: looks are classes, and what SVG needs are its own attributes.
 */
public final class HtmlPage {
  private final String title;
  private final StringBuilder style = new StringBuilder();
  private final StringBuilder script = new StringBuilder();
  private final StringBuilder data = new StringBuilder();
  private final StringBuilder body = new StringBuilder();

  /** A page of this title, which is plain text. */
  public HtmlPage(String title) {
    this.title = title;
  }

  /** A page with the looks that all pages share: light and dark, narrow and wide, on paper. */
  public static HtmlPage styled(String title) {
    return new HtmlPage(title).style(Parts.read("/leat/html/page.css"));
  }

  /** More rules of style. */
  public HtmlPage style(String css) {
    style.append(css).append('\n');
    return this;
  }

  /** More of the one script, run after the body was read. */
  public HtmlPage script(String js) {
    script.append(js).append('\n');
    return this;
  }

  /** Data as JSON for the script, found by its id. */
  public HtmlPage data(String id, String json) {
    data.append("<script type=\"application/json\" id=\"").append(text(id)).append("\">");
    data.append(json.replace("<", "\\u003c").replace(">", "\\u003e").replace("&", "\\u0026"));
    data.append("</script>\n");
    return this;
  }

  /** More of the body, as markup: words in it went through {@link #text}. */
  public HtmlPage body(String markup) {
    body.append(markup);
    return this;
  }

  /** The whole file. */
  public String write() {
    String css = "\n" + style;
    String js = "\n" + script;
    String policy =
        "default-src 'none'; script-src "
            + (script.length() == 0 ? "'none'" : hash(js))
            + "; style-src "
            + (style.length() == 0 ? "'none'" : hash(css))
            + "; base-uri 'none'; form-action 'none'";
    StringBuilder out = new StringBuilder(body.length() + css.length() + js.length() + 1000);
    out.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n");
    out.append("<meta http-equiv=\"Content-Security-Policy\" content=\"");
    out.append(policy).append("\"/>\n<meta name=\"referrer\" content=\"no-referrer\"/>\n");
    out.append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n");
    out.append("<meta name=\"color-scheme\" content=\"light dark\"/>\n");
    out.append("<title>").append(text(title)).append("</title>\n");
    if (style.length() > 0) {
      out.append("<style>").append(css).append("</style>\n");
    }
    out.append("</head>\n<body>\n").append(body).append(data);
    if (script.length() > 0) {
      out.append("<script>").append(js).append("</script>\n");
    }
    return out.append("</body>\n</html>\n").toString();
  }

  /**
   * Words as text of an element or of an attribute in double quotes: no sign of markup is left, and
   * what would hide or turn the direction of writing is shown as an escape.
   */
  public static String text(String words) {
    String shown = Visible.of(words, "\n");
    StringBuilder out = new StringBuilder(shown.length() + 16);
    for (int i = 0; i < shown.length(); i++) {
      char c = shown.charAt(i);
      switch (c) {
        case '&' -> out.append("&amp;");
        case '<' -> out.append("&lt;");
        case '>' -> out.append("&gt;");
        case '"' -> out.append("&quot;");
        case '\'' -> out.append("&#39;");
        default -> out.append(isWhole(shown, i) ? c : '\ufffd');
      }
    }
    return out.toString();
  }

  /** Half a pair of UTF-16 is no character. */
  private static boolean isWhole(String text, int i) {
    char c = text.charAt(i);
    if (Character.isHighSurrogate(c)) {
      return i + 1 < text.length() && Character.isLowSurrogate(text.charAt(i + 1));
    }
    return !Character.isLowSurrogate(c) || i > 0 && Character.isHighSurrogate(text.charAt(i - 1));
  }

  private static String hash(String text) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return "'sha256-" + Base64.getEncoder().encodeToString(digest) + "'";
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
