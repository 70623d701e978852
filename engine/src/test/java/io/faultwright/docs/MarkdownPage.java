package io.faultwright.docs;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** A Markdown page and its fenced blocks. */
final class MarkdownPage {
  private static final String FENCE = "```";

  private final Path file;
  private final List<String> lines;

  private MarkdownPage(Path file, List<String> lines) {
    this.file = file;
    this.lines = lines;
  }

  static MarkdownPage read(Path file) {
    return new MarkdownPage(file, Stored.read(file).lines().toList());
  }

  String name() {
    return file.getFileName().toString();
  }

  List<String> lines() {
    return Collections.unmodifiableList(lines);
  }

  /** Lines outside of fenced blocks. */
  List<String> prose() {
    List<String> prose = new ArrayList<>(lines);
    List<Fence> fences = new ArrayList<>(fences());
    Collections.reverse(fences);
    fences.forEach(fence -> prose.subList(fence.line() - 1, end(fence) + 1).clear());
    return prose;
  }

  /** The headings of a level, without their hashes. */
  List<String> headings(int level) {
    String mark = "#".repeat(level) + " ";
    return prose().stream()
        .filter(line -> line.startsWith(mark))
        .map(line -> line.substring(mark.length()))
        .toList();
  }

  List<Fence> fences() {
    List<Fence> fences = new ArrayList<>();
    for (int at = 0; at < lines.size(); at++) {
      if (lines.get(at).startsWith(FENCE)) {
        Fence fence = fence(at);
        fences.add(fence);
        at = end(fence);
      }
    }
    return fences;
  }

  private Fence fence(int at) {
    StringBuilder body = new StringBuilder();
    int line = at + 1;
    while (!lines.get(line).equals(FENCE)) {
      body.append(lines.get(line)).append('\n');
      line++;
    }
    return new Fence(at + 1, lines.get(at).substring(FENCE.length()), body.toString());
  }

  /** The index of the closing fence. */
  private static int end(Fence fence) {
    return fence.line() + (int) fence.body().lines().count();
  }

  /** Writes the page anew where a block should hold another text. */
  void rewrite(Map<Fence, String> bodies) {
    String text = with(fence -> bodies.getOrDefault(fence, fence.body()));
    try {
      Files.writeString(file, text);
    } catch (IOException trouble) {
      throw new UncheckedIOException(trouble);
    }
  }

  private String with(Function<Fence, String> body) {
    StringBuilder text = new StringBuilder();
    int from = 0;
    for (Fence fence : fences()) {
      lines.subList(from, fence.line()).forEach(line -> text.append(line).append('\n'));
      text.append(body.apply(fence));
      from = end(fence);
    }
    lines.subList(from, lines.size()).forEach(line -> text.append(line).append('\n'));
    return text.toString();
  }
}
