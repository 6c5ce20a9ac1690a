// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * A browser without a window, started once for many pages, for starting takes longer than showing.
 * Told what to do over the Chrome DevTools Protocol; time on a page runs ahead of the clock.
 */
final class Browser implements AutoCloseable {
  /** s that any answer may take. */
  private static final int MOST_SECONDS = 60;

  /** ms of a page's own time after which it is looked at. */
  private static final int BUDGET = 15_000;

  private static final ObjectMapper JSON = new ObjectMapper();

  private final Process process;
  private final Path profile;
  private final WebSocket line;
  private final AtomicInteger last = new AtomicInteger();
  private final Map<String, CompletableFuture<JsonNode>> awaited = new ConcurrentHashMap<>();

  private Browser(Process process, Path profile, URI at) throws Exception {
    this.process = process;
    this.profile = profile;
    line =
        HttpClient.newHttpClient()
            .newWebSocketBuilder()
            .buildAsync(at, new Ear())
            .get(MOST_SECONDS, TimeUnit.SECONDS);
  }

  /**
   * @param folder for its files
   * @param more arguments
   */
  static Browser start(Tool chromium, Path folder, String... more) throws Exception {
    Path profile = Files.createTempDirectory(folder, "profile");
    List<String> arguments =
        new ArrayList<>(
            List.of(
                "--headless",
                "--no-sandbox",
                "--use-angle=swiftshader",
                "--enable-unsafe-swiftshader",
                "--disable-quic",
                "--no-first-run",
                "--disable-sync",
                "--disable-background-networking",
                "--disable-component-update",
                "--user-data-dir=" + profile,
                "--remote-debugging-port=0"));
    arguments.addAll(List.of(more));
    Process process = chromium.start(folder, arguments);
    return new Browser(process, profile, address(process, profile));
  }

  /** Where it listens, once it does. */
  private static URI address(Process process, Path profile) throws Exception {
    Path told = profile.resolve("DevToolsActivePort");
    for (int i = 0; i < 20 * MOST_SECONDS && process.isAlive(); i++) {
      List<String> lines = Files.exists(told) ? Files.readAllLines(told) : List.of();
      if (lines.size() == 2) {
        return URI.create("ws://127.0.0.1:" + lines.get(0) + lines.get(1));
      }
      TimeUnit.MILLISECONDS.sleep(50);
    }
    process.destroyForcibly();
    throw new IOException("the browser does not listen");
  }

  /** The page as it is after its time, as HTML. */
  String dom(URI page) throws Exception {
    return shown(page, this::html);
  }

  /** The page as it is printed. */
  byte[] pdf(URI page) throws Exception {
    return shown(page, this::printed);
  }

  private interface Look<T> {
    T at(String session) throws Exception;
  }

  private <T> T shown(URI page, Look<T> look) throws Exception {
    JsonNode blank = parameters("url", "about:blank");
    String target = ask("", "Target.createTarget", blank).get("targetId").asText();
    ObjectNode attach = parameters("targetId", target).put("flatten", true);
    String session = ask("", "Target.attachToTarget", attach).get("sessionId").asText();
    ask(session, "Page.enable", JSON.createObjectNode());
    CompletableFuture<JsonNode> loaded = await("Page.loadEventFired" + session);
    ask(session, "Page.navigate", parameters("url", page.toString()));
    loaded.get(MOST_SECONDS, TimeUnit.SECONDS);
    CompletableFuture<JsonNode> over = await("Emulation.virtualTimeBudgetExpired" + session);
    JsonNode ahead = parameters("policy", "advance").put("budget", BUDGET);
    ask(session, "Emulation.setVirtualTimePolicy", ahead);
    over.get(MOST_SECONDS, TimeUnit.SECONDS);
    T seen = look.at(session);
    ask("", "Target.closeTarget", parameters("targetId", target));
    return seen;
  }

  private String html(String session) throws Exception {
    JsonNode asked = parameters("expression", "document.documentElement.outerHTML");
    return ask(session, "Runtime.evaluate", asked).get("result").get("value").asText();
  }

  private byte[] printed(String session) throws Exception {
    JsonNode asked = JSON.createObjectNode().put("printBackground", true);
    return Base64.getDecoder().decode(ask(session, "Page.printToPDF", asked).get("data").asText());
  }

  private static ObjectNode parameters(String key, String value) {
    return JSON.createObjectNode().put(key, value);
  }

  private CompletableFuture<JsonNode> await(String key) {
    return awaited.computeIfAbsent(key, k -> new CompletableFuture<>());
  }

  /**
   * @param session of a page; empty: the browser itself
   */
  private JsonNode ask(String session, String method, JsonNode parameters) throws Exception {
    int id = last.incrementAndGet();
    ObjectNode message = JSON.createObjectNode().put("id", id).put("method", method);
    message.set("params", parameters);
    if (!session.isEmpty()) {
      message.put("sessionId", session);
    }
    CompletableFuture<JsonNode> answer = await(String.valueOf(id));
    line.sendText(message.toString(), true).get(MOST_SECONDS, TimeUnit.SECONDS);
    JsonNode said = answer.get(MOST_SECONDS, TimeUnit.SECONDS);
    if (!said.has("result")) {
      throw new IOException(method + ": " + said);
    }
    return said.get("result");
  }

  /** Ends it, and takes away the links of its profile that point out of the folder. */
  @Override
  public void close() throws IOException {
    line.abort();
    process.descendants().forEach(ProcessHandle::destroyForcibly);
    process.destroyForcibly().onExit().join();
    for (String link : List.of("SingletonLock", "SingletonCookie", "SingletonSocket")) {
      Files.deleteIfExists(profile.resolve(link));
    }
  }

  /** Puts messages together and hands them to whoever waits for them. */
  private final class Ear implements WebSocket.Listener {
    private final StringBuilder heard = new StringBuilder();

    @Override
    public CompletionStage<?> onText(WebSocket from, CharSequence part, boolean end) {
      heard.append(part);
      if (end) {
        try {
          hear(JSON.readTree(heard.toString()));
        } catch (IOException e) {
          throw new IllegalStateException(e);
        } finally {
          heard.setLength(0);
        }
      }
      from.request(1);
      return CompletableFuture.completedFuture(null);
    }

    private void hear(JsonNode said) {
      String event = said.path("method").asText() + said.path("sessionId").asText();
      await(said.has("id") ? said.get("id").asText() : event).complete(said);
    }
  }
}
