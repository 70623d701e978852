package io.faultwright.site;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentSkipListMap;

/** A plain host of files in memory, which remembers what it was asked for. */
final class Host implements AutoCloseable {
  private static final Map<String, String> TYPES =
      Map.of(
          "html", "text/html; charset=utf-8",
          "js", "text/javascript; charset=utf-8",
          "css", "text/css; charset=utf-8",
          "svg", "image/svg+xml",
          "png", "image/png",
          "woff2", "font/woff2",
          "pdf", "application/pdf",
          "webmanifest", "application/manifest+json");

  private final HttpServer server;
  private final SortedMap<String, byte[]> files = new ConcurrentSkipListMap<>();
  private final List<String> asked = Collections.synchronizedList(new ArrayList<>());

  Host() {
    try {
      server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    server.createContext("/", this::answer);
    server.start();
  }

  /** Hands out these files below a folder, and no others there. */
  void put(String folder, SortedMap<String, byte[]> site) {
    SortedMap<String, byte[]> fresh = new TreeMap<>();
    site.forEach((path, content) -> fresh.put(folder + path, content));
    files.keySet().removeIf(path -> path.startsWith(folder) && !fresh.containsKey(path));
    files.putAll(fresh);
  }

  String address(String path) {
    return "http://localhost:" + server.getAddress().getPort() + "/" + path;
  }

  /** What was asked for since the last call. */
  List<String> asked() {
    synchronized (asked) {
      List<String> all = List.copyOf(asked);
      asked.clear();
      return all;
    }
  }

  private void answer(HttpExchange exchange) throws IOException {
    String path = exchange.getRequestURI().getPath().substring(1);
    asked.add(path);
    String file = path.isEmpty() || path.endsWith("/") ? path + "index.html" : path;
    byte[] content = files.get(file);
    exchange
        .getResponseHeaders()
        .set(
            "Content-Type",
            TYPES.getOrDefault(
                file.substring(file.lastIndexOf('.') + 1), "application/octet-stream"));
    exchange.sendResponseHeaders(
        content == null ? 404 : 200, content == null ? -1 : content.length);
    if (content != null) {
      exchange.getResponseBody().write(content);
    }
    exchange.close();
  }

  @Override
  public void close() {
    server.stop(0);
  }
}
