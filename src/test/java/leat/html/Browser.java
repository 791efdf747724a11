package leat.html;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * The distribution's Chromium without a window, driven over its own DevTools protocol
 * (chromedevtools.github.io/devtools-protocol): nothing is downloaded for it. One process for all
 * tests of a run.
 */
public final class Browser {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final int SECONDS = 30;
  private static Browser running;
  private static boolean asked;

  private final WebSocket socket;
  private final AtomicInteger ids = new AtomicInteger();
  private final Map<Integer, CompletableFuture<JsonNode>> waiting = new ConcurrentHashMap<>();
  private final List<JsonNode> events = new CopyOnWriteArrayList<>();

  private Browser(String address) {
    socket =
        HttpClient.newHttpClient()
            .newWebSocketBuilder()
            .buildAsync(URI.create(address), new Listener())
            .join();
  }

  /** The browser; null where none is installed, which is told once in one line. */
  public static synchronized Browser orNull() {
    if (!asked) {
      asked = true;
      String program = program();
      if (program == null) {
        System.out.println(
            "The tests in a browser did not run: no chromium on the PATH (apt-get install chromium).");
      } else {
        running = start(program);
      }
    }
    return running;
  }

  private static String program() {
    for (String folder : System.getenv().getOrDefault("PATH", "").split(File.pathSeparator)) {
      for (String name : List.of("chromium", "chromium-browser", "google-chrome")) {
        if (Files.isExecutable(Path.of(folder, name))) {
          return Path.of(folder, name).toString();
        }
      }
    }
    return null;
  }

  private static Browser start(String program) {
    try {
      Path profile = Files.createTempDirectory("leat-browser");
      List<String> line = new ArrayList<>(List.of(program, "--headless", "--no-sandbox"));
      line.addAll(List.of("--disable-gpu", "--disable-quic", "--no-first-run"));
      line.addAll(List.of("--disable-background-networking", "--disable-component-update"));
      line.addAll(List.of("--disable-sync", "--disable-dev-shm-usage", "--hide-scrollbars"));
      line.addAll(List.of("--remote-debugging-address=127.0.0.1", "--remote-debugging-port=0"));
      line.addAll(List.of("--user-data-dir=" + profile, "about:blank"));
      Process process = new ProcessBuilder(line).redirectErrorStream(true).start();
      Runtime.getRuntime().addShutdownHook(new Thread(() -> end(process, profile)));
      return new Browser(address(process));
    } catch (IOException e) {
      throw new IllegalStateException(program + " does not start", e);
    }
  }

  private static void end(Process process, Path profile) {
    process.descendants().forEach(ProcessHandle::destroyForcibly);
    process.destroyForcibly();
    try {
      process.waitFor(5, TimeUnit.SECONDS);
      try (var all = Files.walk(profile)) {
        all.sorted(java.util.Comparator.reverseOrder()).forEach(p -> p.toFile().delete());
      }
    } catch (IOException | InterruptedException e) {
      System.err.println(profile + " is left over: " + e);
    }
  }

  private static String address(Process process) throws IOException {
    BufferedReader out =
        new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    StringBuilder said = new StringBuilder();
    for (String line = out.readLine(); line != null; line = out.readLine()) {
      said.append(line).append('\n');
      if (line.startsWith("DevTools listening on ")) {
        Thread rest = new Thread(() -> out.lines().forEach(l -> {}));
        rest.setDaemon(true);
        rest.start();
        return line.substring("DevTools listening on ".length()).strip();
      }
    }
    throw new IllegalStateException("chromium said: " + said);
  }

  private final class Listener implements WebSocket.Listener {
    private final StringBuilder text = new StringBuilder();

    @Override
    public CompletionStage<?> onText(WebSocket from, CharSequence part, boolean last) {
      text.append(part);
      if (last) {
        take(text.toString());
        text.setLength(0);
      }
      from.request(1);
      return null;
    }
  }

  private void take(String message) {
    try {
      JsonNode node = JSON.readTree(message);
      if (node.has("id")) {
        CompletableFuture<JsonNode> future = waiting.remove(node.get("id").asInt());
        if (future != null) {
          future.complete(node);
        }
      } else {
        events.add(node);
      }
    } catch (IOException e) {
      throw new IllegalStateException(message, e);
    }
  }

  private JsonNode send(String session, String method, Map<String, Object> params) {
    int id = ids.incrementAndGet();
    ObjectNode message = JSON.createObjectNode().put("id", id).put("method", method);
    message.set("params", JSON.valueToTree(params));
    if (session != null) {
      message.put("sessionId", session);
    }
    CompletableFuture<JsonNode> future = new CompletableFuture<>();
    waiting.put(id, future);
    socket.sendText(message.toString(), true).join();
    JsonNode answer = future.orTimeout(SECONDS, TimeUnit.SECONDS).join();
    if (answer.has("error")) {
      throw new AssertionError(method + ": " + answer.get("error"));
    }
    return answer.get("result");
  }

  /** Opens a file at a width, in light or dark, and waits until it is read. */
  public Tab open(Path file, int width, boolean dark) {
    String target =
        send(null, "Target.createTarget", Map.of("url", "about:blank")).get("targetId").asText();
    String session =
        send(null, "Target.attachToTarget", Map.of("targetId", target, "flatten", true))
            .get("sessionId")
            .asText();
    Tab tab = new Tab(target, session);
    for (String domain : List.of("Page", "Runtime", "Log", "Network", "Accessibility")) {
      tab.send(domain + ".enable", Map.of());
    }
    tab.size(width, 900);
    tab.dark(dark);
    tab.send("Page.navigate", Map.of("url", file.toUri().toString()));
    tab.waitFor("document.readyState === 'complete' && location.href !== 'about:blank'");
    return tab;
  }

  /** One open page. */
  public final class Tab implements AutoCloseable {
    private final String target;
    private final String session;

    private Tab(String target, String session) {
      this.target = target;
      this.session = session;
    }

    public JsonNode send(String method, Map<String, Object> params) {
      return Browser.this.send(session, method, params);
    }

    public void size(int width, int height) {
      send(
          "Emulation.setDeviceMetricsOverride",
          Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", width < 600));
    }

    public void dark(boolean dark) {
      Map<String, String> feature =
          Map.of("name", "prefers-color-scheme", "value", dark ? "dark" : "light");
      send("Emulation.setEmulatedMedia", Map.of("features", List.of(feature)));
    }

    /** The value of an expression; a promise is awaited. */
    public JsonNode eval(String expression) {
      JsonNode result =
          send(
              "Runtime.evaluate",
              Map.of("expression", expression, "returnByValue", true, "awaitPromise", true));
      if (result.has("exceptionDetails")) {
        throw new AssertionError(expression + ": " + result.get("exceptionDetails"));
      }
      return result.get("result").path("value");
    }

    public void waitFor(String condition) {
      long end = System.nanoTime() + SECONDS * 1_000_000_000L;
      while (!eval(condition).asBoolean()) {
        if (System.nanoTime() > end) {
          throw new AssertionError("never: " + condition);
        }
        pause();
      }
    }

    /** What the page complained of, and every address it asked for besides itself. */
    public List<String> complaints() {
      List<String> found = new ArrayList<>();
      for (JsonNode event : events) {
        if (!session.equals(event.path("sessionId").asText())) {
          continue;
        }
        JsonNode params = event.get("params");
        switch (event.get("method").asText()) {
          case "Runtime.exceptionThrown" -> found.add(params.toString());
          case "Runtime.consoleAPICalled" -> found.add(params.toString());
          case "Log.entryAdded" -> found.add(params.toString());
          case "Page.javascriptDialogOpening" -> found.add(params.toString());
          case "Network.requestWillBeSent" -> {
            String url = params.get("request").get("url").asText();
            if (!params.get("type").asText().equals("Document")) {
              found.add("asked for " + url);
            }
          }
          default -> {}
        }
      }
      return found;
    }

    public byte[] picture(int width, int height) {
      String data =
          send(
                  "Page.captureScreenshot",
                  Map.of(
                      "format",
                      "png",
                      "captureBeyondViewport",
                      true,
                      "clip",
                      Map.of("x", 0, "y", 0, "width", width, "height", height, "scale", 1)))
              .get("data")
              .asText();
      return java.util.Base64.getDecoder().decode(data);
    }

    /** The page on paper, as PDF. */
    public byte[] paper() {
      JsonNode result =
          send(
              "Page.printToPDF",
              Map.of("preferCSSPageSize", true, "paperWidth", 8.27, "paperHeight", 11.69));
      return java.util.Base64.getDecoder().decode(result.get("data").asText());
    }

    public void mouse(String type, double x, double y) {
      send(
          "Input.dispatchMouseEvent",
          Map.of(
              "type",
              type,
              "x",
              x,
              "y",
              y,
              "button",
              type.equals("mouseMoved") && !held ? "none" : "left",
              "buttons",
              held || type.equals("mousePressed") ? 1 : 0,
              "clickCount",
              1));
      held = type.equals("mousePressed") || held && type.equals("mouseMoved");
    }

    private boolean held;

    public void key(String name) {
      send("Input.dispatchKeyEvent", Map.of("type", "keyDown", "key", name, "code", name));
      send("Input.dispatchKeyEvent", Map.of("type", "keyUp", "key", name, "code", name));
    }

    @Override
    public void close() {
      Browser.this.send(null, "Target.closeTarget", Map.of("targetId", target));
    }
  }

  /** Number of pages of a PDF. */
  public static int pages(byte[] pdf) {
    String text = new String(pdf, StandardCharsets.ISO_8859_1);
    int n = 0;
    for (int at = text.indexOf("/Type /Page"); at >= 0; at = text.indexOf("/Type /Page", at + 1)) {
      char next = text.charAt(at + "/Type /Page".length());
      n += Character.isLetter(next) ? 0 : 1;
    }
    return n;
  }

  private static void pause() {
    try {
      Thread.sleep(20);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }
}
