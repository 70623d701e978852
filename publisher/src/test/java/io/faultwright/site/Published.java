package io.faultwright.site;

import io.faultwright.layout.Paper;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.piece.Ledger;
import io.faultwright.piece.Workshop;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import nu.validator.htmlparser.common.XmlViolationPolicy;
import nu.validator.htmlparser.dom.HtmlDocumentBuilder;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** A published handbook, read back. */
record Published(SortedMap<String, byte[]> files) {
  Published {
    files = Collections.unmodifiableSortedMap(files);
  }

  /** Publishes with charts. */
  static Published publish(KnowledgeBase kb, Options options, Path to) throws IOException {
    Workshop workshop = new Workshop(Ledger.read(to));
    new SitePublisher(workshop)
        .publish(kb, new ChartDrawings(kb, options.draft(), Paper.A4).all(workshop), options, to);
    return read(to);
  }

  static Published read(Path folder) throws IOException {
    SortedMap<String, byte[]> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        files.put(folder.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
      }
    }
    return new Published(files);
  }

  /** Paths of the pages. */
  Stream<String> pages() {
    return files.keySet().stream().filter(path -> path.endsWith(".html"));
  }

  String text(String path) {
    return new String(files.get(path), StandardCharsets.UTF_8);
  }

  /** A page as a browser reads it. */
  Document document(String path) {
    try {
      HtmlDocumentBuilder builder = new HtmlDocumentBuilder(XmlViolationPolicy.ALLOW);
      InputSource source = new InputSource(new ByteArrayInputStream(files.get(path)));
      source.setEncoding("UTF-8");
      return builder.parse(source);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (SAXException e) {
      throw new IllegalStateException(path, e);
    }
  }
}
