// SPDX-License-Identifier: Apache-2.0
package gelfront.report;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.regex.Pattern;

/** Stands where a browser is told that the way to the world is, and writes down who comes. */
final class Gatekeeper implements AutoCloseable {
  /** Whom the browser calls by itself, whatever page it shows; the page names no host at all. */
  private static final Pattern OWN = Pattern.compile("\\b(google|googleapis|gvt1|gstatic)\\.com");

  private final ServerSocket gate = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
  private final List<String> calls = new CopyOnWriteArrayList<>();

  Gatekeeper() throws IOException {
    Thread porter = new Thread(this::listen, "gatekeeper");
    porter.setDaemon(true);
    porter.start();
  }

  int port() {
    return gate.getLocalPort();
  }

  List<String> calls() {
    return List.copyOf(calls);
  }

  void forget() {
    calls.clear();
  }

  private void listen() {
    while (!gate.isClosed()) {
      try (Socket s = gate.accept()) {
        byte[] line = new byte[64];
        int n = Math.max(0, s.getInputStream().read(line));
        String call = new String(line, 0, n, StandardCharsets.US_ASCII);
        if (!call.isEmpty() && !OWN.matcher(call).find()) { // some are opened ahead and never used
          calls.add(call);
        }
      } catch (IOException e) {
        return; // closed: the browser has gone
      }
    }
  }

  @Override
  public void close() throws IOException {
    gate.close();
  }
}
